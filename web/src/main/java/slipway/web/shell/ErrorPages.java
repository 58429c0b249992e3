package slipway.web.shell;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.RequestMapping;

/** One page for every status that is not a page of its own. It says what to do, and never what went wrong inside. */
@Controller
class ErrorPages implements ErrorController {
    private static final Logger LOG = LoggerFactory.getLogger(ErrorPages.class);
    private static final Set<Integer> KNOWN = Set.of(400, 403, 404, 405, 409, 413, 415, 429, 500);
    private static final int FAULT = 500;

    private final Pages pages;

    ErrorPages(Pages pages) {
        this.pages = pages;
    }

    @RequestMapping("/error")
    String error(HttpServletRequest request, HttpServletResponse response, Model model) {
        int status = status(request);
        int shown = KNOWN.contains(status) ? status : status >= FAULT ? FAULT : 400;
        String reference = "";
        if (status >= FAULT) {
            reference = UUID.randomUUID().toString().substring(0, 8);
            @Nullable Throwable cause = (Throwable) request.getAttribute(RequestDispatcher.ERROR_EXCEPTION);
            // The type and the place only: messages of exceptions can hold what was entered.
            LOG.error("fault {} at {}: {}", reference, request.getMethod(), Faults.describe(cause));
        }
        response.setStatus(status);
        Page page = pages.page(request, pages.title(shown));
        model.addAttribute("page", page);
        model.addAttribute("text", page.text("error.text." + shown));
        model.addAttribute("reference", reference);
        return "shell/error";
    }

    private static int status(HttpServletRequest request) {
        return request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE) instanceof Integer code ? code : 404;
    }
}
