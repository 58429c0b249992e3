package slipway.web.people;

/**
 * What the pages of a referral repeat of the form.
 *
 * @param into the episode; blank for a new person
 */
public record ReferralView(String into, String side, String language) {
    static ReferralView of(ReferralForm form) {
        return new ReferralView(form.into(), form.side(), form.language());
    }
}
