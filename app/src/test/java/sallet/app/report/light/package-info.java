@NullMarked
package sallet.app.report.light;

import org.jspecify.annotations.NullMarked;
