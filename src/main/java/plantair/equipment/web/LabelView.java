package plantair.equipment.web;

import plantair.paper.QrCode;

/**
 * A label.
 *
 * @param tag in large letters
 * @param site where it stands
 * @param use key of where the code leads
 * @param code with its address
 */
public record LabelView(String tag, String site, String use, QrCode code) {}
