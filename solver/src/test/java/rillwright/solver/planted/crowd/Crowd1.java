package rillwright.solver.planted.crowd;

/** One of too many in a package; they stand in one file here, to be fewer. */
record Crowd1() {}

record Crowd2() {}

record Crowd3() {}

record Crowd4() {}

record Crowd5() {}

record Crowd6() {}

record Crowd7() {}

record Crowd8() {}

record Crowd9() {}

record Crowd10() {}

record Crowd11() {}

record Crowd12() {}

record Crowd13() {}

record Crowd14() {}

record Crowd15() {}

record Crowd16() {}

record Crowd17() {}

record Crowd18() {}

record Crowd19() {}

record Crowd20() {}

record Crowd21() {}
