package sallet.plan.linear;

/** Who solves linear programmes. */
public enum LinearSolver {
  /** The native simplex solver: fast, for the common systems. */
  NATIVE {
    @Override
    public LinearProgramme programme() {
      return new Glop();
    }

    @Override
    public LinearSolver usable() {
      try {
        Glop.load();
        return this;
      } catch (LinkageError e) {
        return JAVA;
      }
    }
  },

  /** A simplex solver in plain Java: slower, for every system. It loads nothing native. */
  JAVA {
    @Override
    public LinearProgramme programme() {
      return new Simplex();
    }

    @Override
    public LinearSolver usable() {
      return this;
    }
  };

  /** An empty programme. */
  public abstract LinearProgramme programme();

  /** This solver, or the one in plain Java where the native library cannot be loaded. */
  public abstract LinearSolver usable();
}
