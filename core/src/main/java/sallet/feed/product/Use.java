package sallet.feed.product;

/** What a product is for. */
public enum Use {
  /** Main nutrients, weighed in grams. */
  MACRO,
  /** Iron and trace elements, weighed once as a stock. */
  TRACE,
  /** Lowers pH. */
  ACID,
  /** Raises pH. */
  BASE,
  /** Strongly alkaline silicon source. */
  SILICATE,
  /** For checking meters. */
  STANDARD
}
