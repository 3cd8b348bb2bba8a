#include <fstream>
#include <iostream>

#include "app/console/commands.h"
#include "core/practice/sessions/answers_file.h"
#include "core/practice/sessions/marks_file.h"
#include "core/practice/sessions/problem_file.h"
#include "core/record/text_file.h"

namespace wardchalk::console {

namespace {

std::string problemOfLine(const std::string& file, long line) { return file + " line " + std::to_string(line); }

/// Marks one set of answers and prints them; false after telling why it cannot.
bool markOne(const std::string& problemText, const std::string& answersText, const std::string& problemName,
             const std::string& answersName, const MarkOptions& options) {
  const Result<Problem> problem = readProblem(problemText);
  if (!problem) {
    tell(problemName, problem.refusal());
    return false;
  }
  const Result<std::vector<WrittenAnswer>> written = readAnswers(answersText);
  const Result<std::vector<std::string>> answers =
      written ? inOrderOfAsks(*problem, *written) : Result<std::vector<std::string>>(written.refusal());
  if (!answers) {
    tell(answersName, answers.refusal());
    return false;
  }
  const std::vector<MarkedLine> lines = markedLines(*problem, *answers);
  std::string out;
  if (options.json || options.lines) {
    writeMarks(out, *problem, lines, options.rung);
    out += '\n';
  } else {
    out = marksText(*problem, *answers, lines, options.rung);
  }
  std::cout << out;
  return true;
}

/// A class: one problem and one set of answers on each line, and one line of marks for each pair. A line that cannot be
/// marked gives an empty object, so that the lines still belong together.
int markLines(const MarkOptions& options) {
  std::ifstream problems(options.problemFile);
  std::ifstream answers(options.answersFile);
  if (!problems || !answers) {
    tell(problems ? options.answersFile : options.problemFile, refusalOf(RefusalCode::fileUnreadable, "it may not be opened"));
    return unusable;
  }
  std::string problem;
  std::string answer;
  bool failed = false;
  for (long line = 1; std::getline(problems, problem) && std::getline(answers, answer); ++line) {
    if (markOne(problem, answer, problemOfLine(options.problemFile, line), problemOfLine(options.answersFile, line), options))
      continue;
    std::cout << "{}\n";
    failed = true;
  }
  const bool uneven = std::getline(problems, problem) || std::getline(answers, answer);
  if (uneven) std::cerr << "wardchalk-console: the two files do not have the same number of lines\n";
  std::cout << std::flush;
  return failed || uneven ? someLinesFailed : done;
}

}  // namespace

int mark(const MarkOptions& options) {
  if (options.lines) return markLines(options);
  const Result<std::string> problem = readTextFile(options.problemFile);
  const Result<std::string> answers = readTextFile(options.answersFile);
  if (!problem || !answers) {
    tell(problem ? options.answersFile : options.problemFile, (problem ? answers : problem).refusal());
    return unusable;
  }
  if (!markOne(*problem, *answers, options.problemFile, options.answersFile, options)) return unusable;
  std::cout << std::flush;
  return std::cout ? done : unusable;
}

}  // namespace wardchalk::console
