#include "ui/shell/save_check.h"

#include <QFileInfo>

#include "core/record/case_file.h"
#include "core/record/second_check.h"
#include "core/words/phrasebook.h"
#include "core/words/sentences.h"
#include "ui/form/field_table.h"
#include "ui/shell/case_document.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

constexpr int mostTold = 12;  // differences that fit on a small screen

QString orNothing(const std::string& text) {
  return fromCore(text.empty() ? say(PhraseId::saving_nothing) : text);
}

/// What the file says otherwise than the form, an entry a line.
QString differences(const std::vector<EntryCompared>& entries) {
  QStringList lines;
  for (const EntryCompared& entry : entries) {
    if (agrees(entry.agreement)) continue;
    lines << fromCore(say(PhraseId::saving_apart, {{"what", nameOf(fieldSpec(entry.path)).toStdString()},
                                                   {"mine", orNothing(entry.first).toStdString()},
                                                   {"theirs", orNothing(entry.second).toStdString()}}));
  }
  if (lines.isEmpty()) return fromCore(say(PhraseId::saving_sameEntries));
  if (lines.size() > mostTold) lines = lines.mid(0, mostTold) << QStringLiteral("…");
  return lines.join(u'\n');
}

/// How the question begins, and how it ends.
struct Question {
  PhraseId what;
  PhraseId choose;
};

Question questionFor(bool isOwn, bool isCase) {
  if (isCase) return {isOwn ? PhraseId::saving_changed : PhraseId::saving_there, PhraseId::saving_choose};
  if (isOwn) return {PhraseId::saving_unreadable, PhraseId::saving_chooseGone};
  return {PhraseId::saving_thereUnreadable, PhraseId::saving_chooseOver};
}

Result<CaseFile> caseIn(const KnownFile& seen, const QString& file) {
  if (seen.kind == KnownFile::Kind::text) return readCaseFile(seen.text);
  const Result<std::string> text = readTextFile(nativePath(file));
  return text ? readCaseFile(*text) : Result<CaseFile>(text.refusal());
}

}  // namespace

bool isSameFile(const QString& one, const QString& other) {
  return !one.isEmpty() && !other.isEmpty() && QFileInfo(one) == QFileInfo(other);
}

SaveAnswer askBeforeSaving(QWidget* window, const CaseDocument& document, const QString& file,
                           const CaseDraft& mine, Pounds pounds, Dialogs& dialogs) {
  const std::string name = file.toStdString();
  const QString nl = QStringLiteral("\n\n");
  KnownFile seen = fileAt(nativePath(file));
  const bool isOwn = isSameFile(file, document.file());
  if (seen.kind == KnownFile::Kind::nothing) {
    if (!isOwn) return {Overwrite::keepMine, std::move(seen)};  // what stood in the way is gone
    const QString gone = fromCore(say(PhraseId::saving_gone, {{"file", name}}));
    const QString choose = fromCore(say(PhraseId::saving_chooseGone));
    return {dialogs.overwrite(window, gone + nl + choose, false), std::move(seen)};
  }
  const Result<CaseFile> theirs = caseIn(seen, file);
  const Question question = questionFor(isOwn, static_cast<bool>(theirs));
  const std::string why = theirs ? std::string() : sentence(theirs.refusal());
  QString text = fromCore(say(question.what, {{"file", name}, {"why", why}})) + nl;
  if (theirs) text += differences(compareEntries(mine.entries(), theirs->entries, pounds)) + nl;
  text += fromCore(say(question.choose));
  return {dialogs.overwrite(window, text, static_cast<bool>(theirs)), std::move(seen)};
}

}  // namespace wardchalk::ui
