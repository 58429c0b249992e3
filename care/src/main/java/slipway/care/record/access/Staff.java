package slipway.care.record.access;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.Saving;

/** Accounts, teams and broken glass. */
public interface Staff {
    /**
     * A new account in the clinic of the act.
     *
     * @throws IllegalArgumentException if the login is taken
     */
    StaffAccount add(String login, String displayName, Set<Role> roles, Reach reach, String passwordHash, Act act);

    Optional<StaffAccount> find(String staffId);

    /** What signing in as this login needs, whether active or not. */
    Optional<Credentials> credentials(String login);

    /** Accounts of a clinic by display name. */
    List<StaffAccount> list(String clinicId);

    /**
     * Changes name, roles, reach or whether it is active; {@code account} carries the version that was read. With other
     * roles, or blocked, it is signed out everywhere.
     */
    Saving<StaffAccount> change(StaffAccount account, Act act);

    /** Sets the password, forgets failures and signs the account out everywhere. */
    void setPassword(String staffId, String passwordHash, Act act);

    /** Replaces the hash of an unchanged password by a better one; leaves no trail. */
    void rehash(String staffId, String passwordHash);

    /** Sets or removes the second factor. */
    void setTotp(String staffId, Optional<String> sealedSecret, Act act);

    /**
     * Takes note that a code of the second factor was used.
     *
     * @param timeStep of the code
     * @return false if this or a later one was used before
     */
    boolean useTotpStep(String staffId, long timeStep);

    /** Takes note of a sign-in and forgets failures. */
    void signedIn(String staffId, Act act);

    /** Takes note of a sign-out, or of a session that idled out. */
    void signedOut(String staffId, Act act);

    /**
     * Counts an attempt as failed before anybody looks at it, so that many at once, on several servers, count each.
     *
     * @param failures that were read
     * @param nextAllowedAt before this no further attempt is to be taken
     * @return false if another attempt was counted meanwhile; read again then
     */
    boolean countAttempt(String staffId, int failures, Instant nextAllowedAt);

    /**
     * Takes an attempt back that was counted and was right but has not signed anybody in yet.
     *
     * @param before as they were read before it was counted
     */
    void uncountAttempt(Credentials before);

    /** Writes into the trail that an attempt failed; it was counted before. */
    void failed(String staffId, Act act);

    /** Teams of a clinic. */
    List<Team> teams(String clinicId);

    Team addTeam(String name, Set<String> memberIds, Act act);

    void changeTeam(Team team, Act act);

    void removeTeam(String teamId, Act act);

    /** Breaks the glass for a person of the clinic of the act; the trail and the lead hear of it. */
    Grant breakGlass(String personId, String reason, Instant until, Act act);

    /**
     * The same for the person of an episode, for whoever knows only the episode that was refused.
     *
     * @throws slipway.care.record.NotThere if there is no such episode in the clinic of the act
     */
    Grant breakGlassForEpisode(String episodeId, String reason, Instant until, Act act);

    /** Grants of a clinic since some time, newest first. */
    List<Grant> grants(String clinicId, Instant since);
}
