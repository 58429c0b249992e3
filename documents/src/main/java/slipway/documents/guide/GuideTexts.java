package slipway.documents.guide;

import slipway.documents.words.Words;

/**
 * The texts of a guide.
 *
 * @param own those that only the guide has
 * @param sheet those of the sheet for home: the phone says what the paper says
 */
record GuideTexts(Words own, Words sheet) {}
