#include <iostream>

#include "app/console/commands.h"
#include "app/console/files.h"
#include "app/console/output.h"
#include "core/practice/sessions/answers_file.h"
#include "core/practice/sessions/marks_file.h"
#include "core/practice/sessions/problem_file.h"
#include "core/record/line_reader.h"

namespace wardchalk::console {

namespace {

/// A text and how its place is called in what is told.
struct NamedText {
  std::string name;
  Result<std::string> text;
};

/// What is printed for one set of answers; none after telling why there is none.
std::optional<std::string> marksOf(const NamedText& problemText, const NamedText& answersText,
                                   const MarkOptions& options) {
  const Result<Problem> problem =
      problemText.text ? readProblem(*problemText.text) : Result<Problem>(problemText.text.refusal());
  if (!problem) {
    tell(problemText.name, problem.refusal());
    return std::nullopt;
  }
  using Written = Result<std::vector<WrittenAnswer>>;
  const Written written =
      answersText.text ? readAnswers(*answersText.text) : Written(answersText.text.refusal());
  const Result<std::vector<std::string>> answers =
      written ? inOrderOfAsks(*problem, *written) : Result<std::vector<std::string>>(written.refusal());
  if (!answers) {
    tell(answersText.name, answers.refusal());
    return std::nullopt;
  }
  const std::vector<MarkedLine> lines = markedLines(*problem, *answers);
  if (!options.json && !options.lines) return marksText(*problem, *answers, lines, options.rung);
  std::string out;
  writeMarks(out, *problem, lines, options.rung);
  return out + '\n';
}

std::optional<InputFile> opened(const std::string& file) {
  Result<InputFile> input = openInput(file);
  if (input) return *std::move(input);
  tell(inputName(file), input.refusal());
  return std::nullopt;
}

NamedText named(const std::string& file, long line, Result<std::string> text) {
  return {inputName(file) + " line " + std::to_string(line), std::move(text)};
}

/// A class: one problem and one set of answers on each line, and one line of marks for each pair. A line that
/// cannot be marked gives an empty object, so that the lines still belong together.
int markLines(const MarkOptions& options) {
  std::optional<InputFile> problemFile = opened(options.problemFile);
  std::optional<InputFile> answersFile = problemFile ? opened(options.answersFile) : std::nullopt;
  if (!problemFile || !answersFile) return unusable;
  LineReader problems(*problemFile);
  LineReader answers(*answersFile);
  Output out(Output::Kind::json);
  bool failed = false;
  auto problem = problems.next();
  auto answer = answers.next();
  for (long line = 1; problem && answer && out.isWritten(); ++line) {
    const auto marks = marksOf(named(options.problemFile, line, *problem),
                               named(options.answersFile, line, *answer), options);
    out.add(marks.value_or("{}\n"));
    failed = failed || !marks;
    problem = problems.next();
    answer = answers.next();
  }
  const bool uneven = out.isWritten() && (problem || answer);
  if (uneven) std::cerr << "wardchalk-console: the two files do not have the same number of lines\n";
  for (const auto& [file, reader] :
       {std::pair(&options.problemFile, &problems), std::pair(&options.answersFile, &answers)})
    if (reader->brokeOff()) {
      tell(inputName(*file), *reader->brokeOff());
      return out.close(unusable);
    }
  return out.close(failed || uneven ? someLinesFailed : done);
}

}  // namespace

int mark(const MarkOptions& options) {
  if (!oneFromInput({options.problemFile, options.answersFile})) return unusable;
  if (options.lines) return markLines(options);
  const auto marks = marksOf({inputName(options.problemFile), readInput(options.problemFile)},
                             {inputName(options.answersFile), readInput(options.answersFile)}, options);
  if (!marks) return unusable;
  return print(*marks, options.json ? Output::Kind::json : Output::Kind::text);
}

}  // namespace wardchalk::console
