#include "ui/shell/second_check_desk.h"

#include <QDateTime>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "core/words/phrasebook.h"
#include "core/words/sentences.h"
#include "ui/access/announcer.h"
#include "ui/form/case_editor.h"
#include "ui/form/field_table.h"
#include "ui/record/second_check_view.h"
#include "ui/shell/dialogs.h"
#include "ui/shell/notice_bar.h"
#include "ui/shell/own_clipboard.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

/// As it is told on the sheet.
std::string timeNow() {
  return QDateTime::currentDateTime().toString(QStringLiteral("yyyy-MM-dd HH:mm")).toStdString();
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
  notice_->offer("second-leave-button", tr("Stop it (Shift+F9)"), [this] { askToLeave(); });
  voided_->offer("second-voided-close", tr("Understood"), [this] { voided_->quiet(); });
  connect(&parts_.editor, &CaseEditor::changed, this, &SecondCheckDesk::follow);
}

void SecondCheckDesk::makeView() {
  if (view_) return;
  view_ = new SecondCheckView;
  parts_.pages->addWidget(view_);
  connect(view_, &SecondCheckView::firstCorrects, this, [this] { correct(Person::first); });
  connect(view_, &SecondCheckView::secondCorrects, this, [this] { correct(Person::second); });
  connect(view_, &SecondCheckView::finished, this, &SecondCheckDesk::finish);
  connect(view_, &SecondCheckView::left, this, &SecondCheckDesk::askToLeave);
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
  if (parts_.session.isUnderWay()) return;
  parts_.editor.finishAll();
  const CaseDraft& draft = parts_.editor.draft();
  if (draft.isEmpty())
    return parts_.dialogs.tell(
        parts_.window, tr("There is nothing to check yet"),
        tr("The first person enters child, order, reference and stock; then the second."));
  if (const auto path = firstRefused(draft)) {
    parts_.dialogs.tell(
        parts_.window, tr("The second check has not begun"),
        fromCore(say(PhraseId::second_notBegun, {{"field", nameOf(fieldSpec(*path)).toStdString()}})));
    return Q_EMIT fieldWanted(fromCore(*path));
  }
  if (!parts_.session.begin(parts_.editor.shown())) return;
  voided_->quiet();
  parts_.clipboard.empty();  // what the first person copied is not offered to the second
  away_ = putOtherWindowsAway(parts_.window);
  parts_.editor.clear();
  sayWhoseTurn();
  Q_EMIT changed();
  Q_EMIT begun();
}

void SecondCheckDesk::sayWhoseTurn() {
  const SessionState state = parts_.session.state();
  const PhraseId id = state == SessionState::firstCorrects    ? PhraseId::second_correctFirst
                      : state == SessionState::secondCorrects ? PhraseId::second_correctSecond
                                                              : PhraseId::second_hidden;
  notice_->say(fromCore(say(id)));
}

bool SecondCheckDesk::mayCompare() {
  parts_.editor.finishAll();
  const CaseDraft& draft = parts_.editor.draft();
  if (draft.isEmpty()) {
    parts_.dialogs.tell(parts_.window, tr("There is nothing to compare yet"),
                        tr("Enter everything from order, chart, reference and label first."));
    return false;
  }
  if (const auto path = firstRefused(draft)) {
    Q_EMIT fieldWanted(fromCore(*path));
    return false;
  }
  const std::vector<Need> needs = parts_.session.stillNeeded(draft, parts_.rules);
  return needs.empty() || comparesUnfinished(needs);
}

/// Who has seen the first person's entries does not work alone any more.
bool SecondCheckDesk::comparesUnfinished(const std::vector<Need>& needs) {
  QStringList wanting;
  for (const Need& need : needs) wanting << fromCore(sentence(need));
  const std::string list = wanting.join(QStringLiteral("; ")).toStdString();
  return parts_.dialogs.goesOn(parts_.window, {tr("The second entry is not complete yet"),
                                               fromCore(say(PhraseId::second_incomplete, {{"needs", list}})),
                                               tr("&Go on entering"), tr("&Compare all the same")});
}

void SecondCheckDesk::showPage(QWidget* page) {
  if (view_ && page != view_) view_->empty();
  parts_.pages->setCurrentWidget(page);
  Q_EMIT changed();
}

void SecondCheckDesk::compare() {
  const CaseSession& session = parts_.session;
  if (!session.isUnderWay() || session.isComparing() || !mayCompare()) return;
  if (!parts_.session.compare(parts_.editor.draft(), parts_.rules)) return;
  notice_->quiet();
  makeView();
  showComparison();
  showPage(view_);
  announce(*view_, view_->said());
}

/// Who was shown the first entries before the own ones were complete cannot say to have worked alone.
void SecondCheckDesk::showComparison() {
  const auto check = parts_.session.comparison(parts_.editor.draft(), parts_.rules);
  if (check) view_->show(*check, parts_.session.wasAlone(), parts_.session.leavesDifference());
}

/// What two people see differently is corrected first; the first entry of the form where they agree.
QString SecondCheckDesk::firstApart() const {
  const auto check = parts_.session.comparison(parts_.editor.draft(), parts_.rules);
  if (!check) return {};
  for (const EntryCompared& entry : check->entries)
    if (!agrees(entry.agreement)) return fromCore(entry.path);
  return {};
}

void SecondCheckDesk::correct(Person person) {
  const QString apart = firstApart();
  Moved moved = parts_.session.correct(person, parts_.editor.shown());
  if (!moved) return;
  if (moved.toForm) parts_.editor.restore(std::move(*moved.toForm));
  showPage(parts_.pages->widget(0));
  sayWhoseTurn();
  Q_EMIT fieldWanted(apart);
}

/// The first person's entries are in the form again.
void SecondCheckDesk::end(Moved moved) {
  if (!moved) return;
  if (moved.toForm) parts_.editor.restore(std::move(*moved.toForm));
  notice_->quiet();
  showPage(parts_.pages->widget(0));
  dropView();
  const bool others = !away_.isEmpty();
  bringBack(away_);
  if (others) parts_.window->activateWindow();  // the keyboard stays with the case
  Q_EMIT fieldWanted({});
  Q_EMIT ended();
}

void SecondCheckDesk::askToLeave() {
  if (!parts_.session.isUnderWay()) return;
  parts_.editor.finishAll();
  const bool entered = parts_.session.inForm() == Person::first || !parts_.editor.draft().isEmpty();
  const PhraseId what =
      parts_.session.leavesDifference() ? PhraseId::second_stopDiffers : PhraseId::second_stop;
  const GoOnQuestion question{tr("Stop the second check"), fromCore(say(what)), tr("&Go on entering"),
                              tr("&Stop the second check")};
  if (!entered || parts_.dialogs.goesOn(parts_.window, question)) leave();
}

void SecondCheckDesk::leave() { end(parts_.session.leave(parts_.editor.shown(), timeNow())); }

void SecondCheckDesk::finish() { end(parts_.session.record(parts_.editor.shown(), parts_.rules, timeNow())); }

void SecondCheckDesk::reset() {
  bringBackForNewChild(away_);
  notice_->quiet();
  voided_->quiet();
  showPage(parts_.pages->widget(0));
  dropView();
}

void SecondCheckDesk::sayVoid(PhraseId what) {
  voided_->say(fromCore(say(PhraseId::second_voided, {{"what", say(what)}})));
  Q_EMIT changed();
}

void SecondCheckDesk::followRules() {
  if (parts_.session.rulesChanged(parts_.rules)) sayVoid(PhraseId::second_rulesChanged);
}

/// A difference comes back with the entries that differed, and its notice goes then.
void SecondCheckDesk::follow() {
  if (!parts_.session.changed(parts_.editor.draft())) return;
  const SessionState now = parts_.session.state();
  if (now == SessionState::alone) return sayVoid(PhraseId::second_entryChanged);
  if (now == SessionState::differedBefore)
    voided_->say(fromCore(say(PhraseId::second_repeat)));
  else
    voided_->quiet();
  Q_EMIT changed();
}

void SecondCheckDesk::cover() {
  if (view_) view_->empty();
  voided_->quiet();
  notice_->quiet();
}

void SecondCheckDesk::uncover() {
  if (parts_.session.isComparing()) return showComparison();
  if (parts_.session.isUnderWay()) sayWhoseTurn();
}

}  // namespace wardchalk::ui
