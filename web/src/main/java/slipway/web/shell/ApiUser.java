package slipway.web.shell;

import slipway.care.record.access.ApiToken;

/**
 * Another program that acts in the name of an account.
 *
 * @param staff the account
 * @param token what it showed
 */
public record ApiUser(StaffUser staff, ApiToken token) {}
