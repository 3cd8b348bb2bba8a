#include "ui/shell/idle_desk.h"

#include <QApplication>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "core/rules/house_rules.h"
#include "core/session/case_session.h"
#include "core/words/case_facts.h"
#include "core/words/phrasebook.h"
#include "ui/access/announcer.h"
#include "ui/form/case_editor.h"
#include "ui/form/field_table.h"
#include "ui/practice/practice_look.h"
#include "ui/shell/cover_page.h"
#include "ui/shell/idle_watch.h"
#include "ui/shell/notice_bar.h"
#include "ui/shell/own_clipboard.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

/// The facts of a draft, and the fields that were being changed or could not be read.
std::vector<Fact> factsOf(const CaseDraft& draft) {
  std::vector<Fact> facts = caseFacts(draft.toCase());
  QStringList open;
  for (const FieldSpec& spec : fieldTable())
    if (draft.state(spec.path) == FieldState::pending || draft.state(spec.path) == FieldState::refused)
      open << nameOf(spec);
  if (!open.isEmpty())
    facts.push_back({say(PhraseId::idle_unfinished), open.join(QStringLiteral(", ")).toStdString()});
  return facts;
}

/// Where a notice may begin that lies over a window: the band of practice is never hidden, since it says that
/// nothing below it is for a child.
int belowBand(const QWidget& window) {
  const auto* band = window.findChild<PracticeBand*>();
  return band ? band->mapTo(&window, QPoint(0, band->height())).y() : 0;
}

}  // namespace

IdleDesk::IdleDesk(const WindowParts& parts)
    : QObject(parts.window),
      parts_(parts),
      watch_(new IdleWatch(this)),
      notice_(new NoticeBar("idle-warning")),
      page_(new CoverPage) {
  parts_.notices->addWidget(notice_);
  parts_.pages->addWidget(page_);
  followRules();
  connect(watch_, &IdleWatch::warned, this, &IdleDesk::warn);
  connect(watch_, &IdleWatch::kept, this, &IdleDesk::keep);
  connect(watch_, &IdleWatch::idle, this, &IdleDesk::cover);
  connect(page_, &CoverPage::factsWanted, this, &IdleDesk::showFacts);
  connect(page_, &CoverPage::confirmed, this, &IdleDesk::uncover);
  connect(page_, &CoverPage::newChildWanted, this, &IdleDesk::newChildWanted);
}

void IdleDesk::follow() {
  const CaseSession& session = parts_.session;
  if (!session.isCovered()) watch_->setWatching(session.isUnderWay() || !parts_.editor.draft().isEmpty());
}

void IdleDesk::followRules() { watch_->setMinutes(minutes()); }

void IdleDesk::coverAfter(std::optional<int> minutes) {
  own_ = minutes;
  followRules();
}

int IdleDesk::minutes() const {
  const int house = parts_.rules.idleMinutes;
  return std::min(own_.value_or(house), house);
}

void IdleDesk::warn(int seconds) {
  const QString text = held(say(PhraseId::idle_warning, {{"n", std::to_string(seconds)}}, seconds));
  notice_->say(text);
  QWidget* active = QApplication::activeWindow();
  if (!elsewhere_ && active && active != parts_.window)
    elsewhere_ = new NoticeBar("idle-warning-elsewhere", active);
  if (!elsewhere_) return;
  elsewhere_->setAutoFillBackground(true);
  elsewhere_->setGeometry(0, belowBand(*elsewhere_->window()), elsewhere_->window()->width(),
                          elsewhere_->sizeHint().height());
  elsewhere_->say(text);
  elsewhere_->raise();
}

void IdleDesk::keep() {
  notice_->quiet();
  delete elsewhere_;
}

/// The second time round, when the facts were left open, the entries are away already.
void IdleDesk::cover() {
  keep();
  away_ << putOtherWindowsAway(parts_.window);
  parts_.clipboard.empty();
  if (!parts_.session.isCovered()) {
    Q_EMIT covering();
    before_ = parts_.pages->currentWidget();
    parts_.session.cover(parts_.editor.shown());  // before the form is emptied, for whoever hears of that
    parts_.editor.clear();
  }
  parts_.pages->setCurrentWidget(page_);
  page_->cover(minutes());
  Q_EMIT covered();
  announce(*page_, page_->said());
}

void IdleDesk::showFacts() {
  const std::optional<Shelved>& hidden = parts_.session.hidden();
  if (!hidden) return;  // the button was still going down when the cover was lifted
  page_->showFacts(factsOf(hidden->draft));
  announce(*page_, page_->said());
  watch_->setWatching(true);
}

void IdleDesk::leavePage() {
  page_->cover(minutes());  // nothing of the facts stays in it
  if (before_) parts_.pages->setCurrentWidget(before_);
}

void IdleDesk::uncover() {
  Moved moved = parts_.session.uncover();
  if (!moved) return;
  leavePage();
  parts_.editor.restore(std::move(*moved.toForm));
  bringBack(away_);
  parts_.window->activateWindow();
  Q_EMIT uncovered();
}

void IdleDesk::reset() {
  bringBackForNewChild(away_);
  watch_->setWatching(false);
  parts_.pages->setCurrentIndex(0);
  page_->cover(minutes());
}

}  // namespace wardchalk::ui
