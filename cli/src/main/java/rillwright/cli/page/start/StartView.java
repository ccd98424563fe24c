package rillwright.cli.page.start;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.interview.Answers;
import rillwright.cli.interview.Draft;
import rillwright.cli.interview.Interview;
import rillwright.cli.interview.Question;
import rillwright.cli.interview.Questions;
import rillwright.cli.page.drawing.Drawing;
import rillwright.cli.page.html.Html;
import rillwright.cli.page.panel.form.PageWords;
import rillwright.cli.study.section.SectionRequest;

/**
 * The questions of a new job as a form, the drawing that grows with the answers beside it.
 *
 * @param interview checks the answers
 * @param answers given so far; a question without one has what it suggests
 * @param name of the file to be written
 * @param isNamed whether the file's name was given when the page was started
 * @param widthPx of the screen's column
 */
record StartView(Interview interview, Answers answers, String name, boolean isNamed, int widthPx) {

  /**
   * What is wrong with the answers, by the keys of their questions; each is looked at together with
   * those before it that will do, so that it is not blamed for another.
   */
  Map<String, String> faults() {
    Map<String, String> faults = new LinkedHashMap<>();
    Answers sound = Answers.NONE;
    for (Question question : Questions.askedAfter(answers)) {
      if (answers.has(question.key())) {
        String answer = answers.to(question.key());
        Optional<String> fault = interview.faultOf(question, answer, sound);
        fault.ifPresent(words -> faults.put(question.key(), words));
        sound = fault.isPresent() ? sound : sound.with(question.key(), answer);
      }
    }
    return faults;
  }

  /** The page's pieces. */
  String html(boolean placed) {
    Html html = new Html();
    html.open("header", "id", "bar", "data-number", "0", "data-state", "new");
    html.skips("Questions", "questions");
    html.open("div", "class", "job").leaf("h1", "A new job");
    html.leaf(
        "p",
        "Answer what you know; what is left empty is taken as suggested and can be changed later.",
        "class",
        "file");
    html.close().close();
    html.made(placed ? "<div class=\"bench\"><div class=\"see\">" : "");
    html.open("section", "id", "drawing", "aria-label", "Long section so far");
    html.made(drawing()).close();
    html.made(placed ? "</div><div class=\"do\">" : "");
    html.open("section", "id", "questions");
    example(html);
    html.open("form", "class", "questions", "data-start", "begin");
    if (!isNamed) {
      fileName(html);
    }
    Map<String, String> faults = faults();
    Questions.askedAfter(answers)
        .forEach(it -> question(it, Optional.ofNullable(faults.get(it.key())), html));
    html.open("p", "class", "row");
    html.leaf("button", "Make the job", "class", "main", "id", "do-begin").close();
    html.close().close();
    return html.made(placed ? "</div></div>" : "").done();
  }

  private void fileName(Html html) {
    html.open("div", "class", "field").open("label", "for", "file-name");
    html.text("What is the file called?").close();
    html.empty(
        "input",
        "id",
        "file-name",
        "name",
        "file name",
        "value",
        name,
        "autocomplete",
        "off",
        "required",
        "");
    html.leaf("p", "It is written into this folder.", "class", "hint").close();
  }

  /** A copy of an example instead of answers. */
  private void example(Html html) {
    html.open("details", "class", "item new", "id", "new-example");
    html.leaf("summary", "Start from an example instead");
    html.open("form", "class", "row", "data-start", "example");
    html.open("label", "for", "example").text("example").close();
    html.open("select", "id", "example", "name", "example");
    Examples.fileByTitle().keySet().forEach(title -> html.leaf("option", title));
    html.close();
    html.leaf("button", "Open a copy", "id", "do-copy").close();
    html.leaf(
        "p",
        "All figures in it are invented."
            + (isNamed ? "" : " The copy gets the name that stands below."),
        "class",
        "quiet");
    html.close();
  }

  private String drawing() {
    try {
      Project project = Draft.of(answers, interview.file()).project();
      return Drawing.of(new SectionRequest().answer(project), widthPx);
    } catch (InvalidInput wrong) {
      return "<p class=\"quiet\">The drawing waits for what is marked below.</p>";
    }
  }

  private void question(Question question, Optional<String> fault, Html html) {
    String id = "q-" + question.key().replace(' ', '-');
    html.open("div", "class", "field");
    html.open("label", "for", id).text(question.words().apply(answers)).close();
    if (question.choices().isEmpty()) {
      text(question, id, fault.isPresent(), html);
    } else {
      choice(question, id, question.choices(), html);
    }
    html.open("div", "id", id + "-said", "class", "said-of-it");
    fault.ifPresent(words -> html.leaf("p", PageWords.here(words), "class", "fault"));
    html.leaf("p", hint(question), "class", "hint");
    html.close().close();
  }

  /** Without what only a terminal lists. */
  private static String hint(Question question) {
    return PageWords.here(question.hint().replaceAll("\"rillwright catalogue[^.]*\\.", ""));
  }

  private void text(Question question, String id, boolean wrong, Html html) {
    boolean given = answers.has(question.key());
    html.empty(
        "input",
        "id",
        id,
        "name",
        question.key(),
        "placeholder",
        question.suggestion().apply(answers),
        given ? "value" : "",
        given ? answers.to(question.key()) : "",
        "data-answer",
        "",
        "autocomplete",
        "off",
        "aria-describedby",
        id + "-said",
        wrong ? "aria-invalid" : "",
        "true");
  }

  private void choice(Question question, String id, List<String> choices, Html html) {
    html.open(
        "select",
        "id",
        id,
        "name",
        question.key(),
        "data-answer",
        "",
        "aria-describedby",
        id + "-said");
    String chosen = answers.to(question.key());
    choices.forEach(
        it -> html.leaf("option", it, "value", it, it.equals(chosen) ? "selected" : "", ""));
    html.close();
  }
}
