package sallet.plan.rehearse;

/** Somebody who tends the bench by some habit. */
interface Grower {
  /** A task day's hand work; on bowl days the bowl is filled too. */
  void work(World world);
}
