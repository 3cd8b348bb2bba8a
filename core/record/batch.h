#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "core/number/refusal.h"
#include "core/record/case_stream.h"
#include "core/record/ordered_work.h"
#include "core/record/spare_texts.h"
#include "core/record/worksheet_file.h"
#include "core/rules/house_rules.h"

namespace wardchalk {

/// How the cases of a batch went.
struct BatchCount {
  long worked = 0;
  long refused = 0;
};

/// How a batch is read and written.
struct BatchForm {
  StreamKind kind = StreamKind::jsonLines;
  WorksheetExtent extent = WorksheetExtent::whole;  ///< of JSON; a table has its own columns
  int jobs = 1;                                     ///< threads that work
};

/// Works a stream of cases into a stream of answers, one for each, in order and in constant memory. JSON
/// lines become worksheets, one a line; the rows of a table keep their cells and get those of a summary. A
/// case that cannot be read is answered with where and why, and the run goes on.
class Batch {
 public:
  using Write = std::function<void(std::string_view)>;

  Batch(const HouseRules& rules, const BatchForm& form, Write write);

  void take(std::string_view piece) { stream_.take(piece); }
  /// Works what is left.
  void end();

  [[nodiscard]] const BatchCount& count() const { return count_; }
  /// Why nothing could be read: the header of a table.
  [[nodiscard]] const std::optional<Refusal>& refusal() const { return stream_.refusal(); }

 private:
  struct Answer {
    std::string text;
    BatchCount count;
  };

  void add(StreamedCase one);
  void handIn();
  void takeAnswer(Answer answer);
  [[nodiscard]] Answer answer(const std::vector<StreamedCase>& cases);
  [[nodiscard]] bool answerOne(const StreamedCase& one, std::string& out) const;
  void answerInRow(const StreamedCase& one, std::vector<std::string> summary, std::string& out) const;

  const HouseRules& rules_;
  BatchForm form_;
  WorksheetWriter writer_;
  Write write_;
  BatchCount count_;
  CaseStream stream_;
  std::vector<StreamedCase> gathered_;
  std::size_t gatheredBytes_ = 0;
  bool headerWritten_ = false;
  SpareTexts spare_;
  OrderedWork<std::vector<StreamedCase>, Answer> work_;  // last: its threads use the rest
};

}  // namespace wardchalk
