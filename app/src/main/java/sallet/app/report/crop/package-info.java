/** What is told of crops: which grow well in a room, and what becomes of one sowing. */
@NullMarked
package sallet.app.report.crop;

import org.jspecify.annotations.NullMarked;
