/** Tests of the household file. */
@NullMarked
package sallet.app.file;

import org.jspecify.annotations.NullMarked;
