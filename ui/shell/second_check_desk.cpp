#include "ui/shell/second_check_desk.h"

#include <QClipboard>
#include <QDateTime>
#include <QGuiApplication>
#include <QMimeData>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "core/check/work_out.h"
#include "ui/form/field_table.h"
#include "ui/record/second_check_view.h"
#include "ui/shell/copy_desk.h"
#include "ui/shell/dialogs.h"
#include "ui/shell/notice_bar.h"
#include "ui/shell/other_windows.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

/// What the first person copied is not offered to the second. Not every system says whose the clipboard is.
void emptyOwnClipboard() {
  QClipboard* clipboard = QGuiApplication::clipboard();
  const QMimeData* offered = clipboard->mimeData();
  const bool ours = offered && offered->hasFormat(QLatin1String(copiedHere));
  if (ours || clipboard->ownsClipboard()) clipboard->clear();
  if (clipboard->ownsSelection()) clipboard->clear(QClipboard::Selection);
}

}  // namespace

SecondCheckDesk::SecondCheckDesk(const WindowParts& parts)
    : QObject(parts.window),
      parts_(parts),
      notice_(new NoticeBar("second-notice")),
      voided_(new NoticeBar("second-voided")) {
  parts_.notices->addWidget(notice_);
  parts_.notices->addWidget(voided_);
  notice_->offer("second-compare-button", tr("Compare (Ctrl+F9)"), [this] { compare(); });
  notice_->offer("second-leave-button", tr("Leave it (Shift+F9)"), [this] { leave(); });
  voided_->offer("second-voided-close", tr("Understood"), [this] { voided_->quiet(); });
  connect(&parts_.editor, &CaseEditor::changed, this, &SecondCheckDesk::follow);
}

void SecondCheckDesk::makeView() {
  if (view_) return;
  view_ = new SecondCheckView(parts_.book);
  view_->setZoom(zoom_);
  parts_.pages->addWidget(view_);
  connect(view_, &SecondCheckView::firstCorrects, this, [this] { correct(Person::first); });
  connect(view_, &SecondCheckView::secondCorrects, this, [this] { correct(Person::second); });
  connect(view_, &SecondCheckView::finished, this, &SecondCheckDesk::finish);
  connect(view_, &SecondCheckView::left, this, &SecondCheckDesk::leave);
}

/// It may be telling of its own button just now.
void SecondCheckDesk::dropView() {
  if (!view_) return;
  view_->empty();
  parts_.pages->removeWidget(view_);
  view_->hide();
  view_->deleteLater();
  view_ = nullptr;
}

void SecondCheckDesk::begin() {
  if (isUnderWay()) return;
  parts_.editor.finishAll();
  const CaseDraft& draft = parts_.editor.draft();
  if (draft.isEmpty())
    return parts_.dialogs.tell(
        parts_.window, tr("There is nothing to check yet"),
        tr("The first person enters child, order, reference and stock; then the second."));
  if (const auto path = draft.refusedPath()) return Q_EMIT fieldWanted(fromCore(*path));
  record_.reset();
  voided_->quiet();
  emptyOwnClipboard();
  closeOtherWindows(parts_.window);
  inForm_ = Person::second;
  corrected_ = false;
  other_ = parts_.editor.take();
  sayWhoseTurn();
  Q_EMIT changed();
  Q_EMIT fieldWanted(fromCore(fieldTable().front().path));
}

void SecondCheckDesk::sayWhoseTurn() {
  const PhraseId id = !corrected_                ? PhraseId::second_hidden
                      : inForm_ == Person::first ? PhraseId::second_correctFirst
                                                 : PhraseId::second_correctSecond;
  notice_->say(fromCore(say(parts_.book, id)));
}

bool SecondCheckDesk::mayCompare() {
  parts_.editor.finishAll();
  const CaseDraft& draft = parts_.editor.draft();
  if (draft.isEmpty()) {
    parts_.dialogs.tell(parts_.window, tr("There is nothing to compare yet"),
                        tr("Enter everything from order, chart and label first."));
    return false;
  }
  if (const auto path = draft.refusedPath()) Q_EMIT fieldWanted(fromCore(*path));
  return !draft.refusedPath();
}

std::optional<SecondCheck> SecondCheckDesk::comparison() const {
  if (!isUnderWay()) return std::nullopt;
  const CaseDraft& here = parts_.editor.draft();
  const bool firstHere = inForm_ == Person::first;
  const CaseDraft& first = firstHere ? here : other_.draft;
  const CaseDraft& second = firstHere ? other_.draft : here;
  const Worksheet one = workOut(first.toCase(), parts_.rules);
  const Worksheet two = workOut(second.toCase(), parts_.rules);
  const std::vector<WrittenEntry> oneEntries = first.entries();
  const std::vector<WrittenEntry> twoEntries = second.entries();
  return compareChecks({oneEntries, one}, {twoEntries, two}, parts_.book);
}

void SecondCheckDesk::showPage(QWidget* page) {
  comparing_ = view_ && page == view_;
  if (view_ && !comparing_) view_->empty();
  parts_.pages->setCurrentWidget(page);
  Q_EMIT changed();
}

void SecondCheckDesk::compare() {
  if (!isUnderWay() || comparing_ || !mayCompare()) return;
  notice_->quiet();
  makeView();
  view_->show(*comparison());
  showPage(view_);
}

void SecondCheckDesk::swap() {
  Shelved here = parts_.editor.take();
  parts_.editor.restore(std::exchange(other_, std::move(here)));
  inForm_ = inForm_ == Person::first ? Person::second : Person::first;
}

void SecondCheckDesk::correct(Person person) {
  if (inForm_ != person) swap();
  corrected_ = true;
  showPage(parts_.pages->widget(0));
  sayWhoseTurn();
  Q_EMIT fieldWanted({});
}

/// Nothing of the second person's entries is kept.
void SecondCheckDesk::putFirstBack() {
  if (inForm_ == Person::second) swap();
  other_ = {};
  inForm_ = Person::none;
  notice_->quiet();
  showPage(parts_.pages->widget(0));
  dropView();
}

void SecondCheckDesk::leave() {
  if (!isUnderWay()) return;
  putFirstBack();
  Q_EMIT fieldWanted({});
}

QString SecondCheckDesk::recordWords(const SecondCheck& check) const {
  QStringList apart;
  for (const EntryCompared& entry : check.entries)
    if (!agrees(entry.agreement)) apart << nameOf(fieldSpec(entry.path));
  for (const OutcomeCompared& outcome : check.outcomes)
    if (!agrees(outcome.agreement)) apart << fromCore(outcomeName(outcome.outcome, parts_.book));
  if (!check.sameVerdict) apart << fromCore(say(parts_.book, PhraseId::second_verdict));
  const std::string what = apart.join(QStringLiteral(", ")).toStdString();
  std::string said = check.agree() ? say(parts_.book, PhraseId::second_doneSame)
                                   : say(parts_.book, PhraseId::second_doneDiffers, {{"what", what}});
  if (corrected_) said = say(parts_.book, PhraseId::second_corrected, {{"said", said}});
  const std::string time =
      QDateTime::currentDateTime().toString(QStringLiteral("yyyy-MM-dd HH:mm")).toStdString();
  return fromCore(say(parts_.book, PhraseId::second_when, {{"said", said}, {"time", time}}));
}

void SecondCheckDesk::finish() {
  const QString words = recordWords(*comparison());
  putFirstBack();
  record_ = Record{parts_.editor.draft().entries(), words};
  Q_EMIT changed();
  Q_EMIT fieldWanted({});
}

void SecondCheckDesk::forget() {
  other_ = {};
  inForm_ = Person::none;
  record_.reset();
  covered_ = false;
  notice_->quiet();
  voided_->quiet();
  showPage(parts_.pages->widget(0));
  dropView();
}

void SecondCheckDesk::voidRecord() {
  if (!record_) return;
  record_.reset();
  voided_->say(fromCore(say(parts_.book, PhraseId::second_voided)));
  Q_EMIT changed();
}

/// Any change of an entry voids the record, also one that is taken back.
void SecondCheckDesk::follow() {
  if (record_ && !covered_ && parts_.editor.draft().entries() != record_->entries) voidRecord();
}

bool SecondCheckDesk::holdsUnsaved() const {
  return isUnderWay() && (other_.modified || parts_.editor.isModified() || covered_);
}

QString SecondCheckDesk::words() const {
  return record_ ? record_->words : fromCore(say(parts_.book, PhraseId::second_notDone) + ".");
}

void SecondCheckDesk::cover() {
  covered_ = true;
  if (comparing_) view_->empty();
  voided_->quiet();
  notice_->quiet();
}

void SecondCheckDesk::uncover() {
  covered_ = false;
  if (comparing_) view_->show(*comparison());
  if (isUnderWay() && !comparing_) sayWhoseTurn();
}

void SecondCheckDesk::setZoom(int percent) {
  zoom_ = percent;
  if (view_) view_->setZoom(percent);
}

}  // namespace wardchalk::ui
