#include "core/practice/sessions/marks_file.h"

#include <algorithm>

#include "core/practice/marking/hints.h"
#include "core/practice/marking/marking.h"
#include "core/practice/problem/problem_story.h"
#include "core/record/file_head.h"
#include "core/record/json_writer.h"

namespace wardchalk {

namespace {

constexpr FileHead marksHead{"wardchalk.marks", 1};

void writeLine(JsonWriter& writer, const Problem& problem, std::size_t ask, const MarkedLine& line,
               int rung) {
  writer.openObject().member("id", idOf(problem.asks[ask])).member("mark", idOf(line.mark.mark));
  writer.key("slips").openList();
  for (const MistakeId mistake : line.mark.mistakes) writer.text(idOf(mistake));
  writer.closeList();
  if (!line.mark.notes.empty()) {
    writer.key("notes").openList();
    for (const LineNote note : line.mark.notes) writer.text(idOf(note));
    writer.closeList();
  }
  if (line.mark.fault) writer.member("fault", idOf(line.mark.fault->code));
  writer.member("hint", hint(problem, ask, line.mark, line.carried, rung));
  writer.closeObject();
}

}  // namespace

Result<std::vector<std::string>> inOrderOfAsks(const Problem& problem,
                                               std::span<const WrittenAnswer> answers) {
  std::vector<std::string> ordered(problem.asks.size());
  for (const WrittenAnswer& answer : answers) {
    const auto ask =
        std::ranges::find_if(problem.asks, [&](const Ask& asked) { return idOf(asked) == answer.id; });
    if (ask == problem.asks.end()) return refusalOf(RefusalCode::keyUnknown, answer.id);
    ordered[static_cast<std::size_t>(ask - problem.asks.begin())] = answer.text;
  }
  return ordered;
}

std::vector<MarkedLine> markedLines(const Problem& problem, std::span<const std::string> answers,
                                    MarkingTerms terms) {
  std::vector<MarkedLine> lines;
  Marking marking(problem, terms);
  for (std::size_t i = 0; i < problem.asks.size(); ++i) {
    std::vector<CarriedAnswer> carried = marking.carriedTo(i);
    lines.push_back({marking.mark(i, i < answers.size() ? std::string_view(answers[i]) : std::string_view()),
                     std::move(carried)});
  }
  return lines;
}

void writeMarks(std::string& out, const Problem& problem, std::span<const MarkedLine> lines, int rung) {
  JsonWriter writer(out);
  writer.openObject();
  writeHead(writer, marksHead);
  writer.key("lines").openList();
  for (std::size_t i = 0; i < lines.size(); ++i) writeLine(writer, problem, i, lines[i], rung);
  writer.closeList().closeObject();
}

std::string marksText(const Problem& problem, std::span<const std::string> answers,
                      std::span<const MarkedLine> lines, int rung) {
  std::string text;
  const auto add = [&](const std::string& line) {
    if (!line.empty()) text += "    " + line + "\n";
  };
  for (std::size_t i = 0; i < lines.size(); ++i) {
    text += askText(problem.asks[i], problem) + "\n";
    add(i < answers.size() ? answers[i] : std::string());
    std::string word = markWord(lines[i].mark.mark);
    for (const MistakeId mistake : lines[i].mark.mistakes)
      word += "; " + std::string(idOf(mistake)) + " " + mistakeName(mistake);
    add(word);
    add(praise(lines[i].mark));
    for (const std::string& remark : remarks(lines[i].mark)) add(remark);
    add(hint(problem, i, lines[i].mark, lines[i].carried, rung));
  }
  return text;
}

}  // namespace wardchalk
