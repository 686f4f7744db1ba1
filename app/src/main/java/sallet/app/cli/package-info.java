/** The command line: reads the call, runs a use case, prints its report. */
@NullMarked
package sallet.app.cli;

import org.jspecify.annotations.NullMarked;
