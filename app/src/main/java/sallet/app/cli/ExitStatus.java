package sallet.app.cli;

/** What the exit status of every command means. */
enum ExitStatus {
  /** Done, also with a plan that leaves bowls short. */
  DONE(0),
  /** Our own fault. */
  OUR_FAULT(1),
  /** The call or the input is wrong. */
  WRONG_INPUT(2),
  /** The question has no answer. */
  NO_ANSWER(3);

  private final int code;

  ExitStatus(int code) {
    this.code = code;
  }

  int code() {
    return code;
  }
}
