package sallet.plan.linear;

/** Who solves linear programmes. */
public enum LinearSolver {
  /** The native simplex solver: fast, for the common systems. */
  NATIVE;

  /** An empty programme. */
  public LinearProgramme programme() {
    return new Glop();
  }
}
