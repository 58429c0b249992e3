package slipway.app;

import java.io.PrintWriter;
import java.io.StringWriter;

/** One run of the command line, with what it said. */
public record Run(int status, String out, String err) {
    public static Run of(String... args) {
        var out = new StringWriter();
        var err = new StringWriter();
        int status = Main.commandLine()
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(args);
        return new Run(status, out.toString(), err.toString());
    }
}
