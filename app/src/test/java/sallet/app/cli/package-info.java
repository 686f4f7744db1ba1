/** Tests of the command line. */
@NullMarked
package sallet.app.cli;

import org.jspecify.annotations.NullMarked;
