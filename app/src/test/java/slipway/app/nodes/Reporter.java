package slipway.app.nodes;

import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/** A person at home whose phone sends reports to either server, and again to the other when no answer comes. */
final class Reporter extends Thread {
    /** Below what the server takes of one person in a day. */
    private static final int MOST = 38;

    private static final int BETWEEN_MS = 200;

    final People.AtHome person;
    /** Ids of the reports that a server said it has. */
    final Set<String> confirmed = ConcurrentHashMap.newKeySet();

    /** How often a report was sent again. */
    final AtomicInteger again = new AtomicInteger();

    private final CountDownLatch stop = new CountDownLatch(1);

    private final List<String> servers;
    private final Browser browser = new Browser();

    Reporter(People.AtHome person, String one, String other) {
        this.person = person;
        this.servers = List.of(one, other);
    }

    /** No report begins after the one that is under way. */
    void enough() {
        stop.countDown();
    }

    @Override
    public void run() {
        try {
            browser.enter(servers.get(1), person.code());
            String exercise = Reports.exercise(browser.get(servers.get(1), "/home"));
            for (int i = 0; i < MOST && !stop.await(BETWEEN_MS, TimeUnit.MILLISECONDS); i++) {
                send(UUID.randomUUID().toString(), exercise, i % 2);
            }
        } catch (IOException e) {
            throw new IllegalStateException("the server that lives does not answer", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void send(String id, String exercise, int first) throws IOException, InterruptedException {
        int status;
        try {
            status = Reports.send(browser, servers.get(first), id, exercise);
        } catch (IOException e) {
            again.incrementAndGet();
            status = Reports.send(browser, servers.get(1), id, exercise);
        }
        if (status == 200) {
            confirmed.add(id);
        }
    }
}
