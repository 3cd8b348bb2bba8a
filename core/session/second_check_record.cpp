#include "core/session/second_check_record.h"

#include <algorithm>

namespace wardchalk {

Apart apartIn(const SecondCheck& check) {
  Apart apart;
  for (const EntryCompared& entry : check.entries)
    if (!agrees(entry.agreement)) apart.paths.push_back(entry.path);
  apart.verdict = !check.sameVerdict;
  return apart;
}

bool isChangedSince(const SecondCheckRecord& record, const CaseDraft& now) {
  const std::vector<std::string_view>& paths = record.apart.paths;
  return std::ranges::any_of(
      compareEntries(record.entries, now.entries(), record.rules.pounds), [&](const EntryCompared& entry) {
        const bool counts = paths.empty() || std::ranges::find(paths, entry.path) != paths.end();
        return counts && !agrees(entry.agreement);
      });
}

bool isSameChild(const std::vector<WrittenEntry>& one, const std::vector<WrittenEntry>& other,
                 Pounds pounds) {
  return std::ranges::none_of(compareEntries(one, other, pounds), [](const EntryCompared& entry) {
    return entry.path.starts_with("child.") && !agrees(entry.agreement);
  });
}

}  // namespace wardchalk
