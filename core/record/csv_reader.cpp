#include <csv.h>

#include <algorithm>
#include <new>
#include <utility>

#include "core/record/csv.h"
#include "core/record/unicode_text.h"

namespace wardchalk {

namespace {

constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";
/// A piece no larger than this is parsed at once, so that no cell outgrows a row by more.
constexpr std::size_t largestPiece = std::size_t{1} << 16U;

/// No text has a NUL; a table in UTF-16 has one in every other place.
bool isPlainText(std::string_view cell) { return cell.find('\0') == std::string_view::npos && isUtf8(cell); }

int isNoSpace(unsigned char) { return 0; }  // blanks beside a comma belong to the cell (RFC 4180, 2.4)

}  // namespace

bool CsvRow::isBlank() const {
  return std::all_of(cells.begin(), cells.end(), [](const std::string& cell) { return cell.empty(); });
}

/// The library's parser, begun anew behind each row that it cannot read.
class CsvReader::Parser {
 public:
  explicit Parser(Take take) : take_(std::move(take)) { begin(); }
  ~Parser() { csv_free(&csv_); }
  Parser(const Parser&) = delete;
  Parser& operator=(const Parser&) = delete;

  void take(std::string_view text) {
    text = pastByteOrderMark(text);
    while (!text.empty()) {
      if (skipping_)
        text.remove_prefix(skipLine(text));
      else
        text.remove_prefix(parse(text.substr(0, largestPiece)));
    }
  }

  void end() {
    if (mark_) take(*std::exchange(mark_, std::nullopt));
    if (!skipping_ && csv_fini(&csv_, onCell, onRow, this) != 0) refuse(RefusalCode::rowQuotes);
    handOnReady();
  }

 private:
  void begin() {
    if (csv_init(&csv_, CSV_STRICT | CSV_STRICT_FINI | CSV_REPALL_NL) != 0) throw std::bad_alloc();
    csv_set_space_func(&csv_, isNoSpace);
    row_ = {};
    bytes_ = 0;
  }

  /// The mark may come in pieces as everything else.
  std::string_view pastByteOrderMark(std::string_view text) {
    if (!mark_) return text;
    while (!text.empty() && mark_->size() < byteOrderMark.size() &&
           text.front() == byteOrderMark[mark_->size()]) {
      mark_->push_back(text.front());
      text.remove_prefix(1);
    }
    if (text.empty() && mark_->size() < byteOrderMark.size()) return text;
    const std::string begun = *std::exchange(mark_, std::nullopt);
    if (begun.size() < byteOrderMark.size()) take(begun);
    return text;
  }

  std::size_t parse(std::string_view text) {
    const std::size_t read = csv_parse(&csv_, text.data(), text.size(), onCell, onRow, this);
    if (read < text.size()) {
      const int error = csv_error(&csv_);
      if (error == CSV_ENOMEM || error == CSV_ETOOBIG) throw std::bad_alloc();
      fail(RefusalCode::rowQuotes);
    } else if (bytes_ + csv_.entry_pos > largestCsvRow) {
      fail(RefusalCode::rowTooLong);
    }
    handOnReady();
    return read;
  }

  void fail(RefusalCode code) {
    refuse(code);
    csv_free(&csv_);
    begin();
    skipping_ = true;
  }

  std::size_t skipLine(std::string_view text) {
    const std::size_t end = text.find_first_of("\r\n");
    if (end == std::string_view::npos) return text.size();
    skipping_ = false;
    afterReturn_ = text[end] == '\r';
    return end + 1;
  }

  void refuse(RefusalCode code) {
    row_.cells.clear();
    row_.refusal = Refusal{code, {}, code == RefusalCode::rowTooLong ? "1 MiB" : "", {}};
    finishRow();
  }

  void finishRow() {
    row_.number = ++rows_;
    ready_.push_back(std::exchange(row_, {}));
    bytes_ = 0;
  }

  /// Not from within the library, through which no exception of the taker may fly.
  void handOnReady() {
    for (CsvRow& row : std::exchange(ready_, {})) take_(std::move(row));
  }

  void addCell(std::string_view cell) {
    bytes_ += cell.size();
    if (bytes_ > largestCsvRow || row_.cells.size() >= mostCsvCells)
      row_.refusal = Refusal{RefusalCode::rowTooLong, {}, "1 MiB", {}};
    if (!row_.refusal && !isPlainText(cell)) row_.refusal = Refusal{RefusalCode::rowNotUtf8, {}, {}, {}};
    if (row_.refusal)
      row_.cells.clear();
    else
      row_.cells.emplace_back(cell);
    afterReturn_ = false;
  }

  /// The library tells CR and LF as two ends; the second of a CRLF ends no row.
  void endRow(int character) {
    const bool secondOfTwo = character == '\n' && std::exchange(afterReturn_, false);
    if (secondOfTwo && row_.cells.empty() && !row_.refusal) return;
    finishRow();
    afterReturn_ = character == '\r';
  }

  static void onCell(void* text, std::size_t size, void* self) {
    static_cast<Parser*>(self)->addCell({static_cast<const char*>(text), size});
  }
  static void onRow(int character, void* self) { static_cast<Parser*>(self)->endRow(character); }

  Take take_;
  csv_parser csv_{};
  CsvRow row_;
  std::vector<CsvRow> ready_;
  std::size_t bytes_ = 0;  // in the finished cells of the row
  long rows_ = 0;
  bool afterReturn_ = false;
  bool skipping_ = false;                            // to the next line, behind a row that was refused
  std::optional<std::string> mark_ = std::string();  // what came of a byte order mark; none once it is past
};

CsvReader::CsvReader(Take take) : parser_(std::make_unique<Parser>(std::move(take))) {}
CsvReader::~CsvReader() = default;

void CsvReader::take(std::string_view piece) { parser_->take(piece); }
void CsvReader::end() { parser_->end(); }

}  // namespace wardchalk
