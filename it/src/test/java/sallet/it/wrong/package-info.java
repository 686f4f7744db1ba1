/** Classes that break the rules on purpose, to see that the rules notice. */
@NullMarked
package sallet.it.wrong;

import org.jspecify.annotations.NullMarked;
