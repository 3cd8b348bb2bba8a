#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <filesystem>
#include <fstream>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

// The rooms of core/ use one another in one direction only, and know no Qt and no locale; so do the rooms of
// ui/ among themselves. The rules are functions of a file's path and one line, so that each is itself tested
// on lines that break it.

namespace wardchalk::layers_test {
namespace {

namespace fs = std::filesystem;

/// A room uses itself and the rooms before it.
constexpr std::array<std::string_view, 16> rooms = {"number",          "unit",
                                                    "rules",           "child",
                                                    "medicine",        "entry",
                                                    "working",         "check",
                                                    "words",           "record",
                                                    "session",         "practice/problem",
                                                    "practice/lines",  "practice/marking",
                                                    "practice/making", "practice/sessions"};

constexpr std::array<std::string_view, 9> uiRooms = {"theme", "access",   "form",   "working", "paper",
                                                     "board", "practice", "record", "shell"};

/// The place of a file's room among the rooms of `folder` ("core/").
std::optional<std::size_t> placeIn(std::string_view folder, std::span<const std::string_view> known,
                                   std::string_view path) {
  if (!path.starts_with(folder)) return std::nullopt;
  path.remove_prefix(folder.size());
  for (std::size_t i = 0; i < known.size(); ++i)
    if (path == known[i] || (path.starts_with(known[i]) && path[known[i].size()] == '/')) return i;
  return std::nullopt;
}

std::optional<std::size_t> roomOf(std::string_view path) { return placeIn("core/", rooms, path); }
std::optional<std::size_t> uiRoomOf(std::string_view path) { return placeIn("ui/", uiRooms, path); }

/// What an include line names, without its quotes or brackets; empty for other lines.
std::string_view included(std::string_view line) {
  const std::size_t begin = line.find_first_not_of(' ');
  if (begin == std::string_view::npos || !line.substr(begin).starts_with("#include")) return {};
  const std::size_t open = line.find_first_of("\"<");
  if (open == std::string_view::npos) return {};
  const std::size_t close = line.find_first_of("\">", open + 1);
  return line.substr(open + 1, close == std::string_view::npos ? close : close - open - 1);
}

bool isQt(std::string_view header) {
  return header.starts_with("Qt") || (header.starts_with("Q") && header.find('/') == std::string_view::npos &&
                                      header.find('.') == std::string_view::npos);
}

std::string includeFault(std::string_view file, std::string_view line) {
  const std::string_view header = included(line);
  if (header.empty()) return {};
  if (isQt(header)) return "the core knows no Qt";
  if (header.starts_with("ui/") || header.starts_with("app/")) return "the core knows no window";
  if (!header.starts_with("core/")) return {};
  const auto from = roomOf(file);
  const auto to = roomOf(header);
  if (!from || !to) return "a room that is not in the list";
  if (*to > *from) return "a back edge";
  const bool inDetail = header.find("/detail/") != std::string_view::npos;
  return inDetail && *from != *to ? "a detail of another room" : "";
}

std::string uiFault(std::string_view file, std::string_view line) {
  const std::string_view header = included(line);
  if (header.starts_with("app/")) return "the window knows no program";
  if (!header.starts_with("ui/")) return {};
  const auto from = uiRoomOf(file);
  const auto to = uiRoomOf(header);
  if (!from || !to) return "a room that is not in the list";
  if (*to > *from) return "a back edge";
  const bool inDetail = header.find("/detail/") != std::string_view::npos;
  return inDetail && *from != *to ? "a detail of another room" : "";
}

bool isWordCharacter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_';
}

bool hasWord(std::string_view line, std::string_view word) {
  for (std::size_t at = line.find(word); at != std::string_view::npos; at = line.find(word, at + 1)) {
    const bool begins = at == 0 || !isWordCharacter(line[at - 1]);
    const bool ends = at + word.size() == line.size() || !isWordCharacter(line[at + word.size()]);
    if (begins && ends) return true;
  }
  return false;
}

/// Calls that read or write numbers or letters by the locale of the desktop, or that hide a state.
constexpr std::array<std::string_view, 34> localeWords = {
    "strtod",        "strtof",        "strtold",   "strtol",     "strtoul", "strtoll",  "strtoull",
    "stoi",          "stol",          "stoul",     "stoll",      "stoull",  "stod",     "stof",
    "stold",         "atof",          "atoi",      "atol",       "sprintf", "snprintf", "vsnprintf",
    "sscanf",        "scanf",         "setlocale", "localeconv", "locale",  "imbue",    "stringstream",
    "ostringstream", "istringstream", "toupper",   "tolower",    "isalpha", "isdigit"};

std::string localeFault(std::string_view line) {
  const std::size_t comment = line.find("//");
  const std::string_view code = line.substr(0, comment);
  for (const std::string_view word : localeWords)
    if (hasWord(code, word)) return "depends on the locale: " + std::string(word);
  return {};
}

/// What would draw a text from outside as markup. Labels, messages and tool tips are made in ui/theme, where
/// they are plain.
std::string markupFault(std::string_view file, std::string_view line) {
  if (file.starts_with("ui/theme/plain_")) return {};
  const std::string_view code = line.substr(0, line.find("//"));
  for (const std::string_view maker :
       {"new QLabel", "QMessageBox box", "new QMessageBox", "QMessageBox::question(", "QMessageBox::warning(",
        "QMessageBox::information(", "QMessageBox::critical(", "QMessageBox::about(", "QTextBrowser",
        "QTextEdit", "setHtml(", "setWhatsThis(", "setMarkdown("})
    if (code.find(maker) != std::string_view::npos) return "may draw markup: " + std::string(maker);
  for (const std::string_view tip : {"setToolTip(", "ToolTipRole)", "QToolTip::showText("})
    if (code.find(tip) != std::string_view::npos && code.find("plainTip(") == std::string_view::npos)
      return "a tool tip that is not plain";
  return {};
}

std::vector<std::string> faultsIn(const std::string& file, const std::vector<std::string>& lines) {
  std::vector<std::string> faults;
  for (std::size_t i = 0; i < lines.size(); ++i)
    for (const std::string& fault : {includeFault(file, lines[i]), localeFault(lines[i])})
      if (!fault.empty())
        faults.push_back(file + ":" + std::to_string(i + 1) + ": " + fault + ": " + lines[i]);
  return faults;
}

std::vector<std::string> linesOf(const fs::path& path) {
  std::vector<std::string> lines;
  std::ifstream in(path);
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

bool isSource(const fs::path& path) { return path.extension() == ".h" || path.extension() == ".cpp"; }

TEST(Layers, noFileOfTheCoreLooksBack) {
  const fs::path root = WARDCHALK_SOURCE_DIR;
  std::size_t files = 0;
  for (const auto& entry : fs::recursive_directory_iterator(root / "core")) {
    if (!isSource(entry.path())) continue;
    ++files;
    const std::string file = fs::relative(entry.path(), root).generic_string();
    for (const std::string& fault : faultsIn(file, linesOf(entry.path()))) ADD_FAILURE() << fault;
  }
  EXPECT_GT(files, 50U);  // it has looked
}

TEST(Layers, noFileOfTheWindowLooksBack) {
  const fs::path root = WARDCHALK_SOURCE_DIR;
  std::size_t files = 0;
  for (const auto& entry : fs::recursive_directory_iterator(root / "ui")) {
    if (!isSource(entry.path())) continue;
    ++files;
    const std::string file = fs::relative(entry.path(), root).generic_string();
    for (const std::string& line : linesOf(entry.path()))
      EXPECT_EQ(uiFault(file, line), "") << file << ": " << line;
  }
  EXPECT_GT(files, 50U);  // it has looked
}

TEST(Layers, noFileOfTheWindowDrawsMarkup) {
  const fs::path root = WARDCHALK_SOURCE_DIR;
  std::size_t labels = 0;
  for (const auto& entry : fs::recursive_directory_iterator(root / "ui")) {
    if (!isSource(entry.path())) continue;
    const std::string file = fs::relative(entry.path(), root).generic_string();
    for (const std::string& line : linesOf(entry.path())) {
      EXPECT_EQ(markupFault(file, line), "") << file << ": " << line;
      labels += line.find("PlainLabel(") == std::string::npos ? 0U : 1U;
    }
  }
  EXPECT_GT(labels, 20U);  // it has looked
}

TEST(Layers, everyFolderOfTheCoreIsARoom) {
  const fs::path root = WARDCHALK_SOURCE_DIR;
  for (const char* folder : {"core", "core/practice"})
    for (const auto& entry : fs::directory_iterator(root / folder)) {
      const std::string name = fs::relative(entry.path(), root).generic_string();
      EXPECT_TRUE(!entry.is_directory() || name == "core/practice" || roomOf(name)) << name;
    }
}

TEST(Layers, nothingOutsideTheCheckRoomSeesItsDetails) {
  const fs::path root = WARDCHALK_SOURCE_DIR;
  for (const char* folder : {"core", "ui", "app"}) {
    if (!fs::exists(root / folder)) continue;
    for (const auto& entry : fs::recursive_directory_iterator(root / folder)) {
      const std::string file = fs::relative(entry.path(), root).generic_string();
      if (!isSource(entry.path()) || file.starts_with("core/check/")) continue;
      for (const std::string& line : linesOf(entry.path()))
        EXPECT_FALSE(included(line).starts_with("core/check/detail/")) << file << ": " << line;
    }
  }
}

struct Line {
  const char* file;
  const char* line;
  const char* fault;
};

TEST(LayerRules, findWhatTheyAreThereFor) {
  for (const Line& row : {
           Line{"core/unit/unit.cpp", "#include \"core/number/number.h\"", ""},
           Line{"core/unit/unit.cpp", "#include \"core/unit/unit.h\"", ""},
           Line{"core/unit/unit.cpp", "#include <string>", ""},
           Line{"core/unit/unit.cpp", "#include \"core/rules/house_rules.h\"", "a back edge"},
           Line{"core/number/number.cpp", "  #include \"core/practice/marking/mark.h\"", "a back edge"},
           Line{"core/practice/lines/line.cpp", "#include \"core/practice/problem/problem.h\"", ""},
           Line{"core/practice/lines/line.cpp", "#include \"core/practice/marking/replay.h\"", "a back edge"},
           Line{"core/practice/making/trap.cpp", "#include \"core/practice/marking/detail/wrong.h\"",
                "a detail of another room"},
           Line{"core/record/case_file.cpp", "#include \"core/practice/thing.h\"",
                "a room that is not in the list"},
           Line{"core/record/case_file.cpp", "#include \"core/words/sentences.h\"", ""},
           Line{"core/words/sentences.cpp", "#include \"core/record/case_file.h\"", "a back edge"},
           Line{"core/words/sentences.cpp", "#include \"core/check/detail/notebook.h\"",
                "a detail of another room"},
           Line{"core/check/work_out.cpp", "#include \"core/check/detail/notebook.h\"", ""},
           Line{"core/unit/unit.cpp", "#include \"core/other/thing.h\"", "a room that is not in the list"},
           Line{"core/words/sentences.cpp", "#include <QString>", "the core knows no Qt"},
           Line{"core/words/sentences.cpp", "#include <QtCore/QString>", "the core knows no Qt"},
           Line{"core/words/sentences.cpp", "#include \"ui/form/field.h\"", "the core knows no window"},
       })
    EXPECT_EQ(includeFault(row.file, row.line), row.fault) << row.line;
}

TEST(LayerRules, findWhatTheyAreThereForInTheWindow) {
  for (const Line& row : {
           Line{"ui/board/board.cpp", "#include \"ui/working/step_layout.h\"", ""},
           Line{"ui/board/board.cpp", "#include \"core/words/spoken.h\"", ""},
           Line{"ui/board/board.cpp", "#include <QWidget>", ""},
           Line{"ui/board/board.cpp", "#include \"ui/shell/actions.h\"", "a back edge"},
           Line{"ui/working/step_card.cpp", "#include \"ui/board/board.h\"", "a back edge"},
           Line{"ui/working/text.cpp", "#include \"ui/paper/sheet.h\"", "a back edge"},
           Line{"ui/paper/sheet.cpp", "#include \"ui/shell/dialogs.h\"", "a back edge"},
           Line{"ui/board/board.cpp", "#include \"ui/working/detail/syringe.h\"", "a detail of another room"},
           Line{"ui/working/stages.cpp", "#include \"ui/working/detail/syringe.h\"", ""},
           Line{"ui/board/board.cpp", "#include \"ui/other/thing.h\"", "a room that is not in the list"},
           Line{"ui/shell/actions.cpp", "#include \"app/desktop/main.h\"", "the window knows no program"},
       })
    EXPECT_EQ(uiFault(row.file, row.line), row.fault) << row.line;
}

TEST(LayerRules, findWhatWouldDrawMarkup) {
  for (const char* line :
       {"auto* label = new QLabel(text, this);", "  : text_(new QLabel(this)) {",
        "QMessageBox box(icon, title, text);", "item->setToolTip(texts[column]);",
        "if (role == Qt::ToolTipRole) return text(row);", "QMessageBox::warning(this, title, text);",
        "auto* page = new QTextBrowser(this);"})
    EXPECT_NE(markupFault("ui/record/table.cpp", line), "") << line;
  for (const char* line :
       {"auto* label = new PlainLabel(text, this);", "PlainMessage box(icon, title, text, parent);",
        "item->setToolTip(plainTip(text));", "// new QLabel", "QLabel* label = nullptr;",
        "if (role == Qt::ToolTipRole) return plainTip(text(row));"})
    EXPECT_EQ(markupFault("ui/record/table.cpp", line), "") << line;
  EXPECT_EQ(markupFault("ui/theme/plain_tip.cpp", "new QLabel"), "");
}

TEST(LayerRules, findCallsThatDependOnTheLocale) {
  for (const char* line : {"return std::stod(text);", "x = strtod(p, &end);", "std::locale::global({});",
                           "atof(p)", "std::snprintf(buffer, 10, \"%f\", x);", "setlocale(LC_ALL, \"\");",
                           "std::stringstream s;", "int i = std::stoi(text);"})
    EXPECT_NE(localeFault(line), "") << line;
  for (const char* line :
       {"// the same in every locale", "int restoil = 1;", "/// std::stoi is not used", "auto x = my_stoi2;"})
    EXPECT_EQ(localeFault(line), "") << line;
}

}  // namespace
}  // namespace wardchalk::layers_test
