#include "core/entry/detail/findings.h"

#include <algorithm>

namespace wardchalk::entry {

void Findings::remark(EntryRemark remark) {
  if (std::find(remarks_.begin(), remarks_.end(), remark) == remarks_.end()) remarks_.push_back(remark);
}

void Findings::quote(std::string_view typed) {
  for (Refusal& objection : objections_)
    if (typed.find(objection.typed) == std::string_view::npos) objection.typed = shortened(typed);
}

UnreadEntry Findings::refused(std::string whole) {
  Refusal refusal = std::move(objections_.front());
  if (!answers_.empty()) return {std::move(refusal), std::move(answers_)};
  refusal.suggestion = std::move(whole);
  return {std::move(refusal), {}};
}

}  // namespace wardchalk::entry
