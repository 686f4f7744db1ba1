/** What a conductivity meter's number can mean. */
@NullMarked
package sallet.feed.meter;

import org.jspecify.annotations.NullMarked;
