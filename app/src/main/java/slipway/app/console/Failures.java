package slipway.app.console;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;
import slipway.exercises.yaml.MistakesException;
import slipway.store.backup.DamageException;
import slipway.store.db.StoreFailure;

/** Says what went wrong, one mistake a line, and picks the exit status. */
public final class Failures implements IExecutionExceptionHandler, IParameterExceptionHandler {
    @Override
    public int handleExecutionException(Exception failure, CommandLine command, ParseResult parsed) {
        PrintWriter err = command.getErr();
        if (failure instanceof FileAlreadyExistsException there) {
            err.printf("slipway: %s: %s%n", there.getFile(), there.getReason());
            return ExitStatus.BAD_INPUT;
        }
        if (failure instanceof MistakesException || failure instanceof BadInputException) {
            err.println(failure.getMessage());
            return ExitStatus.BAD_INPUT;
        }
        if (failure instanceof StoreFailure) {
            err.println("slipway: " + failure.getMessage());
            return ExitStatus.ENVIRONMENT;
        }
        if (failure instanceof DamageException) {
            err.println("slipway: the backup cannot be used: " + failure.getMessage());
            return ExitStatus.DAMAGE;
        }
        Throwable cause = failure instanceof UncheckedIOException ? failure.getCause() : failure;
        if (cause instanceof IOException blocked) {
            return cannotWrite(blocked, err);
        }
        err.println("slipway: a fault in the program, please report it with these lines:");
        failure.printStackTrace(err);
        return ExitStatus.FAULT;
    }

    private static int cannotWrite(IOException failure, PrintWriter err) {
        String what = failure instanceof FileSystemException file ? String.valueOf(file.getFile()) : "a file";
        String why = failure instanceof AccessDeniedException ? "no permission" : String.valueOf(failure.getMessage());
        err.printf("slipway: %s cannot be written or read: %s%n", what, why);
        return ExitStatus.ENVIRONMENT;
    }

    @Override
    public int handleParseException(ParameterException failure, String[] args) {
        CommandLine command = failure.getCommandLine();
        PrintWriter err = command.getErr();
        err.println("slipway: " + failure.getMessage());
        UnmatchedArgumentException.printSuggestions(failure, err);
        err.printf("Try '%s --help'.%n", command.getCommandSpec().qualifiedName());
        return ExitStatus.BAD_INPUT;
    }
}
