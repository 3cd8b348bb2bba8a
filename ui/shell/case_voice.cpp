#include "ui/shell/case_voice.h"

#include <algorithm>
#include <utility>

#include "core/words/spoken_verdict.h"
#include "ui/access/announcer.h"
#include "ui/form/field_table.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

std::set<std::string_view> refusedIn(const CaseDraft& draft) {
  std::set<std::string_view> paths;
  for (const FieldSpec& spec : fieldTable())
    if (draft.state(spec.path) == FieldState::refused) paths.insert(spec.path);
  return paths;
}

/// Without names and sources: another one of them that changes no verdict has it said no second time.
std::vector<WrittenEntry> figuresOf(std::vector<WrittenEntry> entries) {
  std::erase_if(entries, [](const WrittenEntry& entry) {
    const FieldSpec& spec = fieldSpec(entry.path);
    return spec.kind == FieldKind::words && spec.choices.empty();
  });
  return entries;
}

std::string refusalOf(const CaseDraft& draft, std::string_view path) {
  const Refusal refusal = *draft.refusal(path);
  std::vector<std::string> writes = draft.answers(path);
  if (writes.empty() && !refusal.suggestion.empty()) writes.push_back(refusal.suggestion);
  return spokenRefusal(refusal, path, writes);
}

/// Whether the flag says more than what is missing.
bool isDecided(const Worksheet& sheet) {
  if (sheet.verdict != VerdictKind::undecided) return true;
  return sheet.deciding && sheet.findings[*sheet.deciding].code != FindingCode::finishTyping;
}

}  // namespace

void CaseVoice::follow(const CaseDraft& draft, const Shown& shown) {
  Heard now{draft.entries(), refusedIn(draft), draft.changingPath().has_value(), spokenWhole(shown)};
  if (now == heard_) return;
  const Heard before = std::exchange(heard_, std::move(now));
  Announcer& announcer = Announcer::of(window_);
  announcer.forget();
  if (draft.isEmpty()) {
    decided_ = false;
    said_.clear();
    judged_.clear();
  }
  if (draft.isEmpty() || heard_.changing) return;
  std::string news = newsOf(draft, shown, before.refused);
  std::vector<WrittenEntry> judged = figuresOf(heard_.entries);
  if (news == said_ && judged == judged_) return;
  said_ = std::move(news);
  judged_ = std::move(judged);
  announcer.say(fromCore(said_));
}

std::string CaseVoice::newsOf(const CaseDraft& draft, const Shown& shown,
                              const std::set<std::string_view>& refusedBefore) {
  const bool wasDecided = std::exchange(decided_, isDecided(shown.sheet()));
  for (const std::string_view path : heard_.refused)
    if (!refusedBefore.contains(path)) return refusalOf(draft, path);
  return decided_ || wasDecided ? spokenVerdict(shown) : std::string();
}

QString CaseVoice::whole(const CaseDraft& draft, const Shown& shown) {
  QStringList parts;
  for (const std::string_view path : refusedIn(draft)) parts << fromCore(refusalOf(draft, path));
  if (parts.isEmpty()) parts << fromCore(spokenWhole(shown));
  return parts.join(u' ');
}

}  // namespace wardchalk::ui
