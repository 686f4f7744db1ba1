/**
 * The household file: YAML with units in, a household or plain sentences out. {@code
 * household-keys.csv} names every key with its range and default; the reader, the published schema
 * and the reference page all follow it.
 */
@NullMarked
package sallet.app.file;

import org.jspecify.annotations.NullMarked;
