package rillwright.solver.stream;

import java.util.OptionalDouble;

/**
 * How water runs in a piece of a stream.
 *
 * @param item which
 * @param flowM3PerS through it
 * @param depthM normal depth of a reach; depth of a pool, its crest head included; critical depth
 *     at a step
 * @param velocityMPerS mean speed; empty in a pool
 * @param surfaceWidthM width of the water's surface; empty in a pool
 * @param froude Froude number; empty in a pool and without flow
 * @param criticalDepthM critical depth of the section; empty in a pool
 * @param crestHeadM head over a pool's crest; empty elsewhere
 * @param volumeM3 water in transit, without gravel: all of a reach's, a pool's above its crest
 * @param leastVolumeM3 the least that it may well be
 * @param mostVolumeM3 the most that it may well be
 * @param gravelM3 water in the gravel that drains when the pump stops
 * @param standingM3 water of a pool below its crest, which stays when the pump stops
 * @param wetAreaM2 water surface
 */
public record ItemState(
    StreamItem item,
    double flowM3PerS,
    double depthM,
    OptionalDouble velocityMPerS,
    OptionalDouble surfaceWidthM,
    OptionalDouble froude,
    OptionalDouble criticalDepthM,
    OptionalDouble crestHeadM,
    double volumeM3,
    double leastVolumeM3,
    double mostVolumeM3,
    double gravelM3,
    double standingM3,
    double wetAreaM2) {}
