package slipway.store.trail;

import org.jspecify.annotations.Nullable;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.TrailPayload;
import tools.jackson.databind.json.JsonMapper;

/**
 * What an entry of the trail says beside who and when.
 *
 * @param entity kind of the record, for example {@code section/tolerance}
 * @param version of the record after the act; 0 where there are no versions
 */
public record Note(Action action, String entity, String entityId, long version, TrailPayload payload) {
    private static final TrailPayload NOTHING = new TrailPayload("", "");

    /** Something new. */
    public static Note created(String entity, String entityId, long version, Object after) {
        return new Note(Action.CREATE, entity, entityId, version, payload(null, after));
    }

    /** Something that was there before. */
    public static Note changed(String entity, String entityId, long version, Object before, Object after) {
        return new Note(Action.CHANGE, entity, entityId, version, payload(before, after));
    }

    /** Something without a before and after. */
    public static Note plain(Action action, String entity, String entityId) {
        return new Note(action, entity, entityId, 0, NOTHING);
    }

    /** The same with another action. */
    public Note as(Action other) {
        return new Note(other, entity, entityId, version, payload);
    }

    static TrailPayload payload(@Nullable Object before, Object after) {
        return new TrailPayload(before == null ? "" : json(before), json(after));
    }

    private static String json(Object value) {
        return JsonMapper.shared().writeValueAsString(value);
    }
}
