package slipway.reasoning.measures;

/** How answers become a score. */
public enum Formula {
    /** Sum of the answers. */
    SUM,
    /** Mean of the answered items. */
    MEAN,
    /** 100 x (mean of the answered items - lowest answer) / (highest - lowest). */
    PERCENT
}
