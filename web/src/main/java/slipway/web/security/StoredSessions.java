package slipway.web.security;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InvalidClassException;
import java.io.ObjectInputFilter;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.Duration;
import java.util.HashMap;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import org.springframework.session.MapSession;
import org.springframework.session.SessionRepository;
import org.springframework.stereotype.Component;
import slipway.store.session.SessionStore;
import slipway.web.shell.StaffUser;

/** Reads and writes sessions. One that cannot be read, from another version say, is none: its owner signs in again. */
@Component
class StoredSessions implements SessionRepository<KeptSession> {
    /** Before anybody has signed in; after that the setting of the clinic holds. */
    private static final Duration BEFORE_SIGN_IN = Duration.ofMinutes(15);

    private static final Logger LOG = LoggerFactory.getLogger(StoredSessions.class);

    /** Only what sessions of this program hold; nothing else may come to life from a database. */
    private static final ObjectInputFilter KNOWN = ObjectInputFilter.Config.createFilter(
            "maxdepth=20;maxbytes=200000;java.lang.*;java.time.*;java.util.*;java.util.concurrent.*;"
                    + "org.springframework.security.**;slipway.**;!*");

    private final SessionStore shelf;
    private final Clock clock;

    StoredSessions(SessionStore shelf, Clock clock) {
        this.shelf = shelf;
        this.clock = clock;
    }

    @Override
    public KeptSession createSession() {
        var map = new MapSession();
        map.setMaxInactiveInterval(BEFORE_SIGN_IN);
        return new KeptSession(map, true);
    }

    @Override
    public void save(KeptSession session) {
        if (!session.needsWriting()) {
            return;
        }
        boolean renamed = !session.writtenId().equals(session.getId());
        if (renamed) {
            shelf.delete(session.writtenId());
        }
        if (renamed || session.isFresh()) {
            shelf.add(kept(session.map()));
        } else {
            shelf.change(kept(session.map()));
        }
        session.written();
    }

    @Override
    public @Nullable KeptSession findById(String id) {
        return shelf.find(id, clock.instant()).map(StoredSessions::read).orElse(null);
    }

    @Override
    public void deleteById(String id) {
        shelf.delete(id);
    }

    private static slipway.store.session.KeptSession kept(MapSession map) {
        return new slipway.store.session.KeptSession(
                map.getId(),
                owner(map),
                bytes(map),
                map.getLastAccessedTime(),
                map.getLastAccessedTime().plus(map.getMaxInactiveInterval()));
    }

    /** Account that is signed in by it. */
    private static Optional<String> owner(MapSession map) {
        return map.getAttribute(HttpSessionSecurityContextRepository.SPRING_SECURITY_CONTEXT_KEY)
                                instanceof SecurityContext context
                        && context.getAuthentication() != null
                        && context.getAuthentication().getPrincipal() instanceof StaffUser user
                ? Optional.of(user.accountId())
                : Optional.empty();
    }

    private static byte[] bytes(MapSession map) {
        var attributes = new HashMap<String, Object>();
        for (String name : map.getAttributeNames()) {
            attributes.put(name, map.getRequiredAttribute(name));
        }
        attributes.put(MapSession.class.getName(), map.getMaxInactiveInterval());
        var bytes = new ByteArrayOutputStream();
        try (var out = new ObjectOutputStream(bytes)) {
            out.writeObject(map.getCreationTime());
            out.writeObject(attributes);
        } catch (IOException e) {
            throw new UncheckedIOException("a session holds what cannot be kept", e);
        }
        return bytes.toByteArray();
    }

    private static @Nullable KeptSession read(slipway.store.session.KeptSession kept) {
        try (var in = new ObjectInputStream(new ByteArrayInputStream(kept.content()))) {
            in.setObjectInputFilter(KNOWN);
            var map = new MapSession(kept.id());
            map.setCreationTime((java.time.Instant) in.readObject());
            map.setLastAccessedTime(kept.lastSeenAt());
            for (var entry : ((HashMap<?, ?>) in.readObject()).entrySet()) {
                if (entry.getKey().equals(MapSession.class.getName())) {
                    map.setMaxInactiveInterval((Duration) entry.getValue());
                } else {
                    map.setAttribute((String) entry.getKey(), entry.getValue());
                }
            }
            // One of a version that did not write down whose it is would outlive the block of its account.
            return owner(map).equals(kept.staffId()) ? new KeptSession(map, false) : null;
        } catch (InvalidClassException | ClassNotFoundException e) {
            LOG.warn("a session of another version was dropped");
            return null;
        } catch (IOException e) {
            throw new UncheckedIOException("a kept session cannot be read", e);
        }
    }
}
