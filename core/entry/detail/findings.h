#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/entry/entry_answer.h"
#include "core/entry/entry_setting.h"

namespace wardchalk::entry {

/// What a reader found on its way besides the value: what is wrong with the spelling although the meaning is
/// known, what is to be said of it, what else it fills. With an objection the entry is refused, and its
/// meaning is what a button may write.
class Findings {
 public:
  explicit Findings(const EntrySetting& setting) : setting_(setting) {}

  [[nodiscard]] const EntrySetting& setting() const { return setting_; }
  [[nodiscard]] bool inFile() const { return setting_.from == EntryFrom::file; }

  /// Only the one meaning is sure: refused, and offered in the safe form.
  void object(RefusalCode code, std::string_view typed) { objections_.push_back(refusalOf(code, typed)); }
  void object(Refusal refusal) { objections_.push_back(std::move(refusal)); }
  /// As `object`, but a file is read as it was read before.
  void objectAtBedside(RefusalCode code, std::string_view typed) {
    if (!inFile()) object(code, typed);
  }
  /// Nothing was objected to so far.
  [[nodiscard]] bool isClear() const { return objections_.empty(); }
  void remark(EntryRemark remark);
  /// Lets every objection quote what was typed, where it was found in the same text in small letters.
  void quote(std::string_view typed);
  void also(StaticText path, std::string text) { also_.push_back({path, std::move(text)}); }

  /// A question with two answers: nothing is read until one is chosen.
  void ask(Refusal why, std::vector<std::string> answers) {
    object(std::move(why));
    answers_ = std::move(answers);
  }

  /// The entry as read, or refused for the first objection. `whole` is what to write then: all that it means,
  /// in one line; empty where no line says it all.
  template <typename T>
  [[nodiscard]] EntryResult<T> finish(T value, std::string safe, std::string whole) && {
    if (objections_.empty())
      return ReadEntryAs<T>{std::move(value), std::move(safe), std::move(remarks_), std::move(also_)};
    return refused(std::move(whole));
  }

 private:
  [[nodiscard]] UnreadEntry refused(std::string whole);

  EntrySetting setting_;
  std::vector<Refusal> objections_;
  std::vector<EntryRemark> remarks_;
  std::vector<AlsoFills> also_;
  std::vector<std::string> answers_;
};

}  // namespace wardchalk::entry
