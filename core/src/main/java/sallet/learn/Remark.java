package sallet.learn;

/**
 * Something about a journal that the grower should know.
 *
 * @param line line of the row; 0 when it concerns none
 * @param contradiction whether the row cannot be true, so that nothing may be concluded; else the
 *     row was read as well as it goes
 * @param sentence what is wrong, and what to do or what was assumed
 */
public record Remark(int line, boolean contradiction, String sentence) {}
