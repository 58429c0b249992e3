package slipway.care.record.access;

/** What a patient may do through a link. */
public enum LinkPurpose {
    /** Answer the questions before the first visit. */
    INTAKE,
    /** Follow the plan and check in. */
    GUIDE
}
