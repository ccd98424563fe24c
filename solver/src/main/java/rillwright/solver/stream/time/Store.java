package rillwright.solver.stream.time;

/** Something that holds water; how much follows from its level by geometry. */
interface Store {

  /** Water in it at a level, m³. */
  double volumeM3(double levelM);

  /** dV/dlevel, m², at a level; above 0. */
  double areaM2(double levelM);
}
