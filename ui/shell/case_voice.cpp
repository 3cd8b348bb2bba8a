#include "ui/shell/case_voice.h"

#include <algorithm>
#include <utility>

#include "core/words/fact_words.h"
#include "core/words/read_back.h"
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

/// A text without what a reader does not say, or says alike.
QString asHeard(QString text) {
  text.replace(QChar(0xB2), u'2');  // m²
  text.replace(QChar(0xD7), u'x');
  return text.remove(u' ').toLower();
}

}  // namespace

void CaseVoice::typed(const QString& path, const QString& text) {
  typedPath_ = path.toStdString();
  typed_ = text;
}

/// How the field that was read last was understood; empty where it stands there as it was typed.
QString CaseVoice::readingOf(const CaseDraft& draft, const Worksheet& sheet) {
  const std::string path = std::exchange(typedPath_, {});
  const QString typed = std::exchange(typed_, {});
  if (path.empty() || draft.state(path) != FieldState::read) return {};
  const auto isTyped = [&](const std::string& text) { return asHeard(typed) == asHeard(fromCore(text)); };
  const bool alike = isTyped(draft.line(path)) || isTyped(enteredWords(path, sheet.given));
  if (alike && !isReadBackConverted(path, sheet.given)) return {};
  const QString words = fromCore(factWords(path, sheet.given, sheet.rules));
  if (words.isEmpty()) return {};
  return QStringLiteral("%1: %2.").arg(nameOf(fieldSpec(path)), words);
}

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
  const QString reading = readingOf(draft, shown.sheet());
  if (draft.isEmpty() || heard_.changing) return;
  std::string news = newsOf(draft, shown, before.refused);
  std::vector<WrittenEntry> judged = figuresOf(heard_.entries);
  const bool isNews = news != said_ || judged != judged_;
  if (!isNews && reading.isEmpty()) return;
  said_ = std::move(news);
  judged_ = std::move(judged);
  announcer.say(QStringList{isNews ? fromCore(said_) : QString(), reading}.join(u' ').trimmed());
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
