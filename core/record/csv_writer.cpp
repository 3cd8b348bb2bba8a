#include <algorithm>
#include <array>
#include <utility>

#include "core/record/csv.h"

namespace wardchalk {

namespace {

/// What a spreadsheet takes for the beginning of a formula, also in the wide letters of East Asian keyboards
/// (OWASP, "CSV Injection").
constexpr std::array<std::string_view, 11> formulaBeginnings = {"=",  "+",  "-",  "@",  "\t", "\r",
                                                                "\n", "＝", "＋", "－", "＠"};

bool looksLikeFormula(std::string_view cell) {
  const std::size_t begin = cell.find_first_not_of(' ');
  if (begin == std::string_view::npos) return false;
  return std::any_of(formulaBeginnings.begin(), formulaBeginnings.end(),
                     [&](std::string_view sign) { return cell.substr(begin).starts_with(sign); });
}

void appendCell(std::string& out, std::string_view cell) {
  const bool defuse = looksLikeFormula(cell);
  const bool quote = defuse || cell.find_first_of(",\"\r\n") != std::string_view::npos ||
                     cell.starts_with(' ') || cell.ends_with(' ');
  if (!quote) {
    out.append(cell);
    return;
  }
  out.push_back('"');
  if (defuse) out.push_back('\'');
  for (const char c : cell) {
    if (c == '"') out.push_back('"');
    out.push_back(c);
  }
  out.push_back('"');
}

}  // namespace

void appendCsvRow(std::string& out, const std::vector<std::string>& cells) {
  bool first = true;
  for (const std::string& cell : cells) {
    if (!std::exchange(first, false)) out.push_back(',');
    appendCell(out, cell);
  }
  out.append("\r\n");
}

}  // namespace wardchalk
