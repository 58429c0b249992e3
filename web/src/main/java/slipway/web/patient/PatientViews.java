package slipway.web.patient;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.web.shell.Pages;

/** The frame of the patient's pages. */
@Component
class PatientViews {
    private static final String LANGUAGE = "language";

    private final Pages pages;

    PatientViews(Pages pages) {
        this.pages = pages;
    }

    String show(String view, Language language, HttpServletRequest request, Model model) {
        Words words = words(language);
        model.addAttribute("page", pages.pageApart(request, words.get("title")));
        model.addAttribute("t", words);
        model.addAttribute(LANGUAGE, language);
        return view;
    }

    static Words words(Language language) {
        return Words.beside(PatientViews.class, language);
    }
}
