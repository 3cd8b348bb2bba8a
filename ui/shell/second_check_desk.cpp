#include "ui/shell/second_check_desk.h"

#include <QDateTime>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "core/check/work_out.h"
#include "core/words/phrasebook.h"
#include "core/words/sentences.h"
#include "ui/form/field_table.h"
#include "ui/record/second_check_view.h"
#include "ui/shell/dialogs.h"
#include "ui/shell/notice_bar.h"
#include "ui/shell/own_clipboard.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

QStringList entriesApart(const SecondCheck& check) {
  QStringList apart;
  for (const EntryCompared& entry : check.entries)
    if (!agrees(entry.agreement)) apart << nameOf(fieldSpec(entry.path));
  return apart;
}

/// What the two have to look at; the figures between follow from the entries.
QStringList whatDiffers(const SecondCheck& check) {
  QStringList apart = entriesApart(check);
  if (!check.sameVerdict) apart << fromCore(say(PhraseId::second_verdict));
  return apart;
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
  view_->setZoom(zoom_);
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
  if (isUnderWay()) return;
  parts_.editor.finishAll();
  const CaseDraft& draft = parts_.editor.draft();
  if (draft.isEmpty())
    return parts_.dialogs.tell(
        parts_.window, tr("There is nothing to check yet"),
        tr("The first person enters child, order, reference and stock; then the second."));
  if (const auto path = draft.refusedPath()) {
    parts_.dialogs.tell(
        parts_.window, tr("The second check has not begun"),
        fromCore(say(PhraseId::second_notBegun, {{"field", nameOf(fieldSpec(*path)).toStdString()}})));
    return Q_EMIT fieldWanted(fromCore(*path));
  }
  record_.reset();
  voided_->quiet();
  parts_.clipboard.empty();  // what the first person copied is not offered to the second
  away_ = putOtherWindowsAway(parts_.window);
  inForm_ = Person::second;
  corrected_ = false;
  firstLook_.reset();
  other_ = parts_.editor.take();
  sayWhoseTurn();
  Q_EMIT changed();
  Q_EMIT begun();
}

void SecondCheckDesk::sayWhoseTurn() {
  const PhraseId id = !corrected_                ? PhraseId::second_hidden
                      : inForm_ == Person::first ? PhraseId::second_correctFirst
                                                 : PhraseId::second_correctSecond;
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
  if (const auto path = draft.refusedPath()) {
    Q_EMIT fieldWanted(fromCore(*path));
    return false;
  }
  if (firstLook_) return true;
  const std::vector<Need> needs = stillNeeded();
  if (!needs.empty() && !comparesUnfinished(needs)) return false;
  firstLook_ = FirstLook{{}, needs.empty()};
  firstLook_->apart = whatDiffers(*comparison()).join(QStringLiteral(", "));
  return true;
}

/// Before the first comparison the form is the second person's.
std::vector<Need> SecondCheckDesk::stillNeeded() const {
  const Worksheet first = workOut(other_.draft.toCase(), parts_.rules);
  return needsBeyond(first, workOut(parts_.editor.draft().toCase(), parts_.rules));
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
  return compareChecks({oneEntries, one}, {twoEntries, two});
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
  showComparison();
  showPage(view_);
}

/// Who was shown the first entries before the own ones were complete cannot say to have worked alone.
void SecondCheckDesk::showComparison() { view_->show(*comparison(), firstLook_ && firstLook_->complete); }

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
  firstLook_.reset();
  notice_->quiet();
  showPage(parts_.pages->widget(0));
  dropView();
  const bool others = !away_.isEmpty();
  bringBack(away_);
  if (others) parts_.window->activateWindow();  // the keyboard stays with the case
}

void SecondCheckDesk::askToLeave() {
  if (!isUnderWay()) return;
  parts_.editor.finishAll();
  const bool entered = inForm_ == Person::first || !parts_.editor.draft().isEmpty();
  const GoOnQuestion question{tr("Stop the second check"), fromCore(say(PhraseId::second_stop)),
                              tr("&Go on entering"), tr("&Stop the second check")};
  if (!entered || parts_.dialogs.goesOn(parts_.window, question)) leave();
}

void SecondCheckDesk::leave() {
  if (!isUnderWay()) return;
  putFirstBack();
  Q_EMIT fieldWanted({});
}

std::string SecondCheckDesk::doneWords(const SecondCheck& check) const {
  const bool alone = firstLook_ && firstLook_->complete;
  if (const auto apart = disagreementOf(check)) {
    const std::string how = alone ? std::string() : say(PhraseId::second_notAlone);
    return say(PhraseId::second_doneDiffers,
               {{"first", apart->first},
                {"second", apart->second},
                {"entries", entriesApart(check).join(QStringLiteral(", ")).toStdString()},
                {"how", how}});
  }
  if (!alone) return say(PhraseId::second_notIndependent);
  if (firstLook_->apart.isEmpty()) return say(PhraseId::second_doneSame);
  return say(PhraseId::second_differedAtFirst, {{"what", firstLook_->apart.toStdString()}});
}

QString SecondCheckDesk::recordWords(const SecondCheck& check) const {
  const std::string time =
      QDateTime::currentDateTime().toString(QStringLiteral("yyyy-MM-dd HH:mm")).toStdString();
  return fromCore(say(PhraseId::second_when, {{"said", doneWords(check)}, {"time", time}}));
}

void SecondCheckDesk::finish() {
  const SecondCheck check = *comparison();
  const QString words = recordWords(check);
  putFirstBack();
  record_ = Record{parts_.editor.draft().entries(), parts_.rules, words, disagreementOf(check)};
  Q_EMIT changed();
  Q_EMIT fieldWanted({});
}

void SecondCheckDesk::forget() {
  other_ = {};
  inForm_ = Person::none;
  firstLook_.reset();
  record_.reset();
  covered_ = false;
  bringBackForNewChild(away_);
  notice_->quiet();
  voided_->quiet();
  showPage(parts_.pages->widget(0));
  dropView();
}

void SecondCheckDesk::voidRecord(PhraseId what) {
  if (!record_) return;
  record_.reset();
  voided_->say(fromCore(say(PhraseId::second_voided, {{"what", say(what)}})));
  Q_EMIT changed();
}

/// After how many minutes entries are covered changes no figure.
void SecondCheckDesk::followRules() {
  if (!record_) return;
  HouseRules now = parts_.rules;
  now.idleMinutes = record_->rules.idleMinutes;
  if (now == record_->rules) return;
  voidRecord(PhraseId::second_rulesChanged);
}

/// Any change of an entry voids the record, also one that is taken back.
void SecondCheckDesk::follow() {
  if (record_ && !covered_ && parts_.editor.draft().entries() != record_->entries)
    voidRecord(PhraseId::second_entryChanged);
}

bool SecondCheckDesk::holdsUnsaved() const {
  return isUnderWay() && (other_.modified || parts_.editor.isModified() || covered_);
}

QString SecondCheckDesk::words() const {
  return record_ ? record_->words : fromCore(say(PhraseId::second_notDone) + ".");
}

void SecondCheckDesk::cover() {
  covered_ = true;
  if (comparing_) view_->empty();
  voided_->quiet();
  notice_->quiet();
}

void SecondCheckDesk::uncover() {
  covered_ = false;
  if (comparing_) showComparison();
  if (isUnderWay() && !comparing_) sayWhoseTurn();
}

void SecondCheckDesk::setZoom(int percent) {
  zoom_ = percent;
  if (view_) view_->setZoom(percent);
}

}  // namespace wardchalk::ui
