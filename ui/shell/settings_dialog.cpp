#include "ui/shell/settings_dialog.h"

#include <QEvent>
#include <QScreen>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "ui/form/choice_box.h"
#include "ui/form/quiet_line.h"
#include "ui/record/rows_page.h"
#include "ui/record/rule_row.h"
#include "ui/shell/setting_choices.h"
#include "ui/theme/buttons.h"
#include "ui/theme/flow_layout.h"
#include "ui/theme/letters.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

constexpr int usualHeight = 440;

ChoiceBox& boxOf(const RuleRow& row) { return *static_cast<ChoiceBox*>(row.box()); }

SettingChoices offeredBy(const ChoiceBox& box) {
  SettingChoices choices;
  for (int i = 0; i < box.count(); ++i) choices.push_back({box.itemData(i).toString(), box.itemText(i)});
  return choices;
}

/// A box is left alone that offers this already: it may be the one that was just chosen from.
void offerIn(const RuleRow& row, const SettingChoices& choices, const QString& chosen) {
  ChoiceBox& box = boxOf(row);
  if (offeredBy(box) != choices) {
    const QSignalBlocker quietly(box);
    box.clear();
    for (const SettingChoice& choice : choices) box.addChoice(choice.id.toStdString(), choice.words);
  }
  box.choose(chosen.toStdString());
}

void describe(const RuleRow& row, const QString& words, QuietLine::Tone tone = QuietLine::Tone::quiet) {
  row.example()->say(words, tone);
  row.box()->setAccessibleDescription(words);
}

QString idOf(UnitSystem units) {
  switch (units) {
    case UnitSystem::metric:
      return QStringLiteral("metric");
    case UnitSystem::household:
      return QStringLiteral("household");
    case UnitSystem::none:
      break;
  }
  return QStringLiteral("none");
}

QString idOf(RulesKind rules) {
  switch (rules) {
    case RulesKind::exact:
      return QStringLiteral("exact");
    case RulesKind::classroom:
      return QStringLiteral("classroom");
    case RulesKind::own:
      break;
  }
  return QStringLiteral("own");
}

}  // namespace

SettingsDialog::SettingsDialog(QWidget* parent) : QDialog(parent), page_(new RowsPage(this)) {
  setAttribute(Qt::WA_DeleteOnClose);
  setObjectName(QStringLiteral("settings"));
  setWindowTitle(tr("Settings"));
  auto* column = new QVBoxLayout(this);
  column->addWidget(page_, 1);
  textSize_ = addRow("text-size", tr("Size of letters"), &SettingsDialog::chooseTextSize);
  describe(*textSize_, tr("Below 100 % only the working gets smaller."));
  colours_ = addRow("colours", tr("Colours"), &SettingsDialog::chooseColours);
  describe(*colours_, tr("Of every window; a printed sheet keeps its own."));
  units_ = addRow("units", tr("Units offered"), &SettingsDialog::chooseUnits);
  describe(*units_, tr("Until the next child; then as the house rules say."));
  rules_ = addRow("house-rules", tr("House rules"), &SettingsDialog::chooseRules);
  addRulesButtons();
  cover_ = addRow("cover", tr("Cover when no key is pressed"), &SettingsDialog::chooseCover);
  describe(*cover_, tr("Never later than the house rules say."));
  paper_ = addRow("paper", tr("Paper"), &SettingsDialog::choosePaper);
  describe(*paper_, tr("Of sheets that are looked at, saved as PDF or printed."));
  page_->finish();
  addClose(column);
  fit();
}

/// As large as its letters ask for, within its window and on the screen.
void SettingsDialog::fit() {
  const QSize wanted(RuleRow::usualWidth(fontMetrics()), qRound(usualHeight * textScale()));
  fitted_ = wanted.boundedTo(parentWidget() ? parentWidget()->size() : wanted);
  resize(fitted_);
  if (!isVisible()) return;
  const QRect room = screen()->availableGeometry();
  const QRect frame = frameGeometry();
  move(qBound(room.left(), frame.left(), qMax(room.left(), room.right() - frame.width())),
       qBound(room.top(), frame.top(), qMax(room.top(), room.bottom() - frame.height())));
}

/// Whoever drew it to a size of their own keeps that.
void SettingsDialog::changeEvent(QEvent* event) {
  QDialog::changeEvent(event);
  if (event->type() == QEvent::FontChange && size() == fitted_) fit();
}

RuleRow* SettingsDialog::addRow(const char* name, const QString& label,
                                void (SettingsDialog::*chosen)(const QString&)) {
  auto* box = new ChoiceBox(this, ChoiceBox::Empty::never);
  box->setObjectName(QStringLiteral("setting:") + QLatin1String(name));
  auto* row = new RuleRow(label, box, this);
  page_->column()->addWidget(row);
  const auto tell = [this, box, chosen] { (this->*chosen)(fromCore(box->chosen())); };
  connect(box, &ChoiceBox::passed, this, tell);
  connect(box, &ChoiceBox::made, this, tell);
  return row;
}

void SettingsDialog::addRulesButtons() {
  rulesButtons_ = new QWidget(this);
  auto* flow = new FlowLayout(rulesButtons_);
  flow->setContentsMargins(0, 0, 0, 0);
  QPushButton* open = roomyButton(tr("&Open a file of rules …"), "settings-rules-open", rulesButtons_);
  QPushButton* look = roomyButton(tr("C&hange the rules …"), "settings-rules-edit", rulesButtons_);
  for (QPushButton* button : {open, look}) flow->addWidget(button);
  connect(open, &QPushButton::clicked, this, &SettingsDialog::rulesFileWanted);
  connect(look, &QPushButton::clicked, this, &SettingsDialog::rulesEditorWanted);
  page_->column()->addWidget(rulesButtons_);
}

void SettingsDialog::addClose(QVBoxLayout* column) {
  auto* buttons = new QWidget(this);
  auto* flow = new FlowLayout(buttons);
  flow->setContentsMargins(0, 0, 0, 0);
  flow->pushRight();
  QPushButton* close = roomyButton(tr("&Close"), "settings-close", buttons);
  flow->addWidget(close);
  connect(close, &QPushButton::clicked, this, &QDialog::close);
  column->addWidget(buttons);
}

void SettingsDialog::follow(const SettingsShown& now) {
  offerIn(*textSize_, textSizeChoices(now), QString::number(now.textSize));
  offerIn(*colours_, colourChoices(), fromCore(nameOf(now.colours)));
  offerIn(*units_, unitChoices(now), idOf(now.units));
  offerIn(*rules_, rulesChoices(now), idOf(now.rules));
  const bool isWell = now.rulesTrouble.isEmpty();
  describe(*rules_, isWell ? now.rulesWords : now.rulesTrouble,
           isWell ? QuietLine::Tone::quiet : QuietLine::Tone::refused);
  const bool sooner = now.coverMinutes && *now.coverMinutes < now.houseMinutes;
  offerIn(*cover_, coverChoices(now), sooner ? QString::number(*now.coverMinutes) : QStringLiteral("house"));
  offerIn(*paper_, paperChoices(), nameOf(now.paper));
  for (QWidget* one : {static_cast<QWidget*>(rules_), rulesButtons_, static_cast<QWidget*>(cover_)})
    one->setVisible(now.rulesOffered);
}

void SettingsDialog::chooseTextSize(const QString& id) { Q_EMIT textSizeChosen(id.toInt()); }

void SettingsDialog::chooseColours(const QString& id) {
  if (const auto colours = coloursNamed(id)) Q_EMIT coloursChosen(*colours);
}

void SettingsDialog::chooseUnits(const QString& id) {
  for (const UnitSystem units : {UnitSystem::none, UnitSystem::metric, UnitSystem::household})
    if (id == idOf(units)) Q_EMIT unitsChosen(units);
}

void SettingsDialog::chooseRules(const QString& id) {
  for (const RulesKind rules : {RulesKind::exact, RulesKind::classroom, RulesKind::own})
    if (id == idOf(rules)) Q_EMIT rulesChosen(rules);
}

void SettingsDialog::chooseCover(const QString& id) {
  bool counted = false;
  const int minutes = id.toInt(&counted);
  Q_EMIT coverMinutesChosen(counted ? std::optional(minutes) : std::nullopt);
}

void SettingsDialog::choosePaper(const QString& id) {
  if (const auto paper = paperSizeNamed(id)) Q_EMIT paperChosen(*paper);
}

}  // namespace wardchalk::ui
