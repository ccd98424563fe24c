package rillwright.solver.network;

import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;
import rillwright.solver.law.friction.DarcyWeisbach;
import rillwright.solver.law.friction.FixedFactor;
import rillwright.solver.law.friction.HazenWilliams;
import rillwright.solver.law.friction.PipeFriction;
import rillwright.solver.water.Water;

/** What a pipe's wall is like. */
public sealed interface Friction {

  /** The law of a pipe of a length and bore with this wall. */
  PipeFriction law(double lengthM, Bore bore, Water water);

  /** Absolute roughness, m, 0 or more. */
  record Roughness(double roughnessM) implements Friction {
    public Roughness {
      Require.atLeast("roughness", roughnessM, 0, "m");
    }

    @Override
    public PipeFriction law(double lengthM, Bore bore, Water water) {
      return new DarcyWeisbach(lengthM, bore, roughnessM, water.kinematicViscosityM2PerS());
    }
  }

  /** Hazen and Williams's coefficient C, greater than 0. */
  record HazenC(double c) implements Friction {
    public HazenC {
      Require.positive("Hazen and Williams's C", c, "");
    }

    @Override
    public PipeFriction law(double lengthM, Bore bore, Water water) {
      return new HazenWilliams(lengthM, bore, c);
    }
  }

  /** A fixed Darcy friction factor, greater than 0. */
  record DarcyFactor(double darcyFrictionFactor) implements Friction {
    public DarcyFactor {
      Require.positive("Darcy friction factor", darcyFrictionFactor, "");
    }

    @Override
    public PipeFriction law(double lengthM, Bore bore, Water water) {
      return new FixedFactor(lengthM, bore, darcyFrictionFactor);
    }
  }
}
