package sallet.plan.linear;

/** Who solves linear programmes. */
public enum LinearSolver {
  /** The native simplex solver: fast, for the common systems. */
  NATIVE,

  /** A simplex solver in plain Java, for every system; nothing native is loaded. */
  JAVA;

  /** An empty programme, of {@link #usable}. */
  public LinearProgramme programme() {
    return usable() == NATIVE ? new Glop() : new Simplex();
  }

  /** This solver, or the one in plain Java where the native library cannot be loaded. */
  public LinearSolver usable() {
    if (this == JAVA) {
      return this;
    }
    try {
      Glop.load();
      return this;
    } catch (LinkageError e) {
      return JAVA;
    }
  }
}
