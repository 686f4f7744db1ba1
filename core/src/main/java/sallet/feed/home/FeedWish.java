package sallet.feed.home;

import java.util.Optional;

/**
 * What is asked of the feed.
 *
 * @param litres volume to mix, L
 * @param stockFactor strength of concentrates, when wanted
 * @param reading a meter's reading with its unit, to be explained
 * @param correct a measured value of the running reservoir to be mended: "pH 6.9" or "EC 1.1 mS/cm"
 * @param weeks weeks to follow the reservoir, 0 for none
 * @param trayM2 size of the tray whose plants drink from it, m²
 */
public record FeedWish(
    double litres,
    Optional<Integer> stockFactor,
    Optional<String> reading,
    Optional<String> correct,
    int weeks,
    double trayM2) {}
