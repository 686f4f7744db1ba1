/** One class a use case, the same for every face of the program: no screens, no files. */
@NullMarked
package sallet.app.use;

import org.jspecify.annotations.NullMarked;
