package slipway.web.security;

import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.session.MapSession;
import org.springframework.session.Session;

/** A session that knows whether it must be written: when what it holds changed, or a minute went by. */
final class KeptSession implements Session {
    private static final Duration WORTH_WRITING = Duration.ofSeconds(60);

    private final MapSession map;
    private boolean fresh;
    private Instant writtenAccess;
    private String writtenId;
    private boolean changed;

    KeptSession(MapSession map, boolean fresh) {
        this.map = map;
        this.fresh = fresh;
        this.changed = fresh;
        this.writtenAccess = map.getLastAccessedTime();
        this.writtenId = map.getId();
    }

    MapSession map() {
        return map;
    }

    /** The id under which it is kept, which a changed id replaces. */
    String writtenId() {
        return writtenId;
    }

    /** Whether nothing of it has been kept yet. */
    boolean isFresh() {
        return fresh;
    }

    boolean needsWriting() {
        return changed || map.getLastAccessedTime().isAfter(writtenAccess.plus(WORTH_WRITING));
    }

    void written() {
        changed = false;
        fresh = false;
        writtenAccess = map.getLastAccessedTime();
        writtenId = map.getId();
    }

    @Override
    public String getId() {
        return map.getId();
    }

    @Override
    public String changeSessionId() {
        changed = true;
        return map.changeSessionId();
    }

    @Override
    @SuppressWarnings("TypeParameterUnusedInFormals") // given by the interface
    public <T> @Nullable T getAttribute(String name) {
        return map.getAttribute(name);
    }

    @Override
    public Set<String> getAttributeNames() {
        return map.getAttributeNames();
    }

    @Override
    public void setAttribute(String name, @Nullable Object value) {
        changed = true;
        map.setAttribute(name, value);
    }

    @Override
    public void removeAttribute(String name) {
        changed = true;
        map.removeAttribute(name);
    }

    @Override
    public Instant getCreationTime() {
        return map.getCreationTime();
    }

    @Override
    public void setLastAccessedTime(Instant time) {
        map.setLastAccessedTime(time);
    }

    @Override
    public Instant getLastAccessedTime() {
        return map.getLastAccessedTime();
    }

    @Override
    public void setMaxInactiveInterval(Duration interval) {
        changed = true;
        map.setMaxInactiveInterval(interval);
    }

    @Override
    public Duration getMaxInactiveInterval() {
        return map.getMaxInactiveInterval();
    }

    @Override
    public boolean isExpired() {
        return map.isExpired();
    }
}
