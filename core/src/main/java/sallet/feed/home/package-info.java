/** The household's own water, bags and scale as the feed understands them. */
@NullMarked
package sallet.feed.home;

import org.jspecify.annotations.NullMarked;
