package sallet.feed.home;

import java.util.Optional;

/**
 * What is asked of the feed.
 *
 * @param litres volume to mix, L
 * @param stockFactor strength of concentrates, when wanted
 * @param reading a meter's reading with its unit, to be explained
 * @param correct a measured value of the running reservoir to be mended: "pH 6.9" or "EC 1.1 mS/cm"
 */
public record FeedWish(
    double litres,
    Optional<Integer> stockFactor,
    Optional<String> reading,
    Optional<String> correct) {}
