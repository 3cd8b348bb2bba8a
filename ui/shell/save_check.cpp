#include "ui/shell/save_check.h"

#include "core/record/case_file.h"
#include "core/record/second_check.h"
#include "core/words/sentences.h"
#include "ui/form/field_table.h"
#include "ui/shell/case_document.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

constexpr int mostTold = 12;  // differences that fit on a small screen

QString orNothing(const std::string& text, const Phrasebook& book) {
  return fromCore(text.empty() ? say(book, PhraseId::saving_nothing) : text);
}

/// What the file says otherwise than the form, an entry a line.
QString differences(const std::vector<EntryCompared>& entries, const Phrasebook& book) {
  QStringList lines;
  for (const EntryCompared& entry : entries) {
    if (agrees(entry.agreement)) continue;
    lines << fromCore(say(book, PhraseId::saving_apart,
                          {{"what", nameOf(fieldSpec(entry.path)).toStdString()},
                           {"mine", orNothing(entry.first, book).toStdString()},
                           {"theirs", orNothing(entry.second, book).toStdString()}}));
  }
  if (lines.isEmpty()) return fromCore(say(book, PhraseId::saving_sameEntries));
  if (lines.size() > mostTold) lines = lines.mid(0, mostTold) << QStringLiteral("…");
  return lines.join(u'\n');
}

}  // namespace

Overwrite mayOverwrite(QWidget* window, const CaseDocument& document, const CaseDraft& mine, Pounds pounds,
                       Dialogs& dialogs, const Phrasebook& book) {
  const std::string file = document.file().toStdString();
  const QString nl = QStringLiteral("\n\n");
  const auto ask = [&](const QString& what, const QString& more, bool theirs) {
    const PhraseId choose = theirs ? PhraseId::saving_choose : PhraseId::saving_chooseGone;
    return dialogs.overwrite(
        window, what + (more.isEmpty() ? nl : nl + more + nl) + fromCore(say(book, choose)), theirs);
  };
  const FileNow now = document.fileNow();
  if (now == FileNow::asKnown) return Overwrite::keepMine;
  if (now == FileNow::gone)
    return ask(fromCore(say(book, PhraseId::saving_gone, {{"file", file}})), {}, false);
  const Result<std::string> text = readTextFile(nativePath(document.file()));
  const Result<CaseFile> theirs = text ? readCaseFile(*text) : Result<CaseFile>(text.refusal());
  if (!theirs) {
    const std::string why = sentence(theirs.refusal(), book);
    return ask(fromCore(say(book, PhraseId::saving_unreadable, {{"file", file}, {"why", why}})), {}, false);
  }
  return ask(fromCore(say(book, PhraseId::saving_changed, {{"file", file}})),
             differences(compareEntries(mine.entries(), theirs->entries, pounds), book), true);
}

}  // namespace wardchalk::ui
