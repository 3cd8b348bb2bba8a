#include "ui/record/reference_picker.h"

#include <QAccessible>
#include <QCoreApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QShortcut>
#include <QTableWidget>
#include <QTimer>
#include <QVBoxLayout>
#include <array>

#include "core/medicine/paths.h"
#include "core/words/case_facts.h"
#include "core/words/fact_words.h"
#include "core/words/phrasebook.h"
#include "core/words/sentences.h"
#include "ui/access/announcer.h"
#include "ui/access/answers.h"
#include "ui/record/plain_table.h"
#include "ui/theme/buttons.h"
#include "ui/theme/flow_layout.h"
#include "ui/theme/letters.h"
#include "ui/theme/plain_label.h"
#include "ui/theme/plain_scroll_bar.h"
#include "ui/theme/plain_tip.h"
#include "ui/theme/target.h"
#include "ui/theme/text.h"
#include "ui/theme/tick_box.h"

namespace wardchalk::ui {

namespace {

constexpr QSize pickerSize(1040, 660);
/// Of a name beside a tick, whose words cannot be broken.
constexpr qsizetype mostLetters = 48;
enum Column : std::uint8_t { band, child, low, high, maximum, howOften, mostDoses, source, reviewBy };
/// Of the columns of the entries but the last, which is as wide as its words.
constexpr std::array bandParts = {0.14, 0.13, 0.12, 0.12, 0.12, 0.11, 0.10, 0.16};

/// Pixels at the usual letters: below them an entry's columns would cut their figures.
constexpr int leastForColumns = 900;

QStringList columnNames() {
  const auto name = [](const char* text) { return QCoreApplication::translate("ReferencePicker", text); };
  return {name("For"),       name("This child"), name("From"),   name("Up to"),    name("Maximum"),
          name("How often"), name("Most doses"), name("Source"), name("Review by")};
}

/// What the columns hold, one beneath the other with their names; an empty one says nothing.
QString oneBeneathTheOther(const QStringList& cells) {
  const QStringList names = columnNames();
  QStringList lines;
  for (qsizetype i = 0; i < cells.size(); ++i)
    if (!cells[i].isEmpty()) lines << names[i] + QStringLiteral(": ") + cells[i];
  return lines.join(u'\n');
}

QString inOneLine(const QStringList& parts) {
  QStringList stated;
  for (const QString& part : parts)
    if (!part.isEmpty()) stated << part;
  return stated.join(QStringLiteral(" · "));
}

}  // namespace

ReferencePicker::ReferencePicker(Child child, Order order, const HouseRules& rules, const Date& today,
                                 QWidget* parent)
    : QDialog(parent), child_(std::move(child)), order_(std::move(order)), rules_(rules), today_(today) {
  setWindowTitle(tr("Choose a reference from the ward's list"));
  setObjectName(QStringLiteral("reference-picker"));
  auto* column = new QVBoxLayout(this);
  column->setSpacing(8);
  column->addWidget(buildFile());
  column->addWidget(buildSearch(), 2);
  column->addWidget(buildBands(), 3);
  said_ = new PlainLabel(this);
  giveRole(said_, QAccessible::Client);  // it is announced, and not to be said with the dialog as well
  said_->setObjectName(QStringLiteral("said"));
  said_->setWordWrap(true);
  said_->setFocusPolicy(Qt::StrongFocus);
  said_->setTextInteractionFlags(Qt::TextSelectableByKeyboard | Qt::TextSelectableByMouse);
  shareLetters(said_, 1.1, true);
  said_->setMinimumHeight(2 * leastTarget);
  column->addWidget(said_);
  column->addWidget(buildOther());
  column->addWidget(buildReview());
  column->addWidget(buildButtons());
  resize((pickerSize * textScale()).boundedTo(parent ? parent->window()->size() : pickerSize));
  search_->setFocus();
  auto* again = new QShortcut(Qt::Key_F3, this);
  connect(again, &QShortcut::activated, this, [this] { Announcer::of(*this).again(); });
  findAgain();
}

QWidget* ReferencePicker::buildFile() {
  auto* row = new QWidget(this);
  auto* line = new FlowLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  file_ = new PlainLabel(row);
  file_->setObjectName(QStringLiteral("list-file"));
  auto* open = plainButton(tr("&Open a list …"), "open-list", row);
  auto* import = plainButton(tr("Make a list from a ta&ble (CSV) …"), "import-list", row);
  connect(open, &QPushButton::clicked, this, &ReferencePicker::listWanted);
  connect(import, &QPushButton::clicked, this, &ReferencePicker::importWanted);
  line->addWidget(file_);
  line->pushRight();
  line->addWidget(open);
  line->addWidget(import);
  return row;
}

QWidget* ReferencePicker::buildSearch() {
  auto* part = new QWidget(this);
  auto* column = new QVBoxLayout(part);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  auto* searchLabel = new PlainLabel(tr("&Find medicine, indication or route"), part);
  search_ = new QLineEdit(part);
  search_->setObjectName(QStringLiteral("find"));
  search_->setMinimumHeight(leastTarget);
  search_->setAccessibleName(tr("Find medicine, indication or route"));
  search_->setPlaceholderText(tr("a part of the name; Up and Down walk through what is found"));
  search_->installEventFilter(this);
  searchLabel->setBuddy(search_);
  auto* foundLabel = new PlainLabel(tr("In the &list"), part);
  found_ = new QListWidget(part);
  found_->setVerticalScrollBar(new PlainScrollBar(Qt::Vertical));
  found_->setObjectName(QStringLiteral("found"));
  found_->setAccessibleName(tr("Found in the list"));
  found_->setUniformItemSizes(true);
  foundLabel->setBuddy(found_);
  for (QWidget* one : std::initializer_list<QWidget*>{searchLabel, search_, foundLabel})
    column->addWidget(one);
  column->addWidget(found_, 1);
  connect(search_, &QLineEdit::textChanged, this, &ReferencePicker::findAgain);
  connect(found_, &QListWidget::currentRowChanged, this, &ReferencePicker::showGroup);
  connect(found_, &QListWidget::itemDoubleClicked, this, &ReferencePicker::take);
  return part;
}

QWidget* ReferencePicker::buildBands() {
  auto* part = new QWidget(this);
  auto* column = new QVBoxLayout(part);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  auto* label = new PlainLabel(tr("Its &entries"), part);
  bands_ = plainTable(columnNames(), tr("Its entries: of what is chosen, one for each band"), part);
  bands_->setObjectName(QStringLiteral("bands"));
  bands_->setSelectionMode(QAbstractItemView::NoSelection);  // which entry holds is judged, not pointed at
  bands_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  bands_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);  // or it takes its room from the last column
  bands_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  label->setBuddy(bands_);
  column->addWidget(label);
  column->addWidget(bands_, 1);
  return part;
}

QWidget* ReferencePicker::buildReview() {
  review_ = new QWidget(this);
  auto* column = new QVBoxLayout(review_);
  column->setContentsMargins(0, 0, 0, 0);
  pastReview_ = new PlainLabel(review_);
  pastReview_->setObjectName(QStringLiteral("past-review"));
  pastReview_->setWordWrap(true);
  useIt_ = new TickBox(tr("It is &past its review date: use it all the same"), review_);
  useIt_->setObjectName(QStringLiteral("use-it"));
  useIt_->setMinimumHeight(leastTarget);
  column->addWidget(pastReview_);
  column->addWidget(useIt_);
  connect(useIt_, &QCheckBox::toggled, this, &ReferencePicker::allowTaking);
  return review_;
}

QWidget* ReferencePicker::buildOther() {
  useOther_ = new TickBox(this);
  useOther_->setObjectName(QStringLiteral("use-other"));
  useOther_->setMinimumHeight(leastTarget);
  QFont bold = useOther_->font();
  bold.setBold(true);
  useOther_->setFont(bold);
  connect(useOther_, &QCheckBox::toggled, this, &ReferencePicker::allowTaking);
  return useOther_;
}

QWidget* ReferencePicker::buildButtons() {
  auto* row = new QWidget(this);
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  take_ = plainButton(tr("&Take this reference"), "take", row);
  take_->setDefault(true);
  auto* cancel = plainButton(tr("&Cancel"), "cancel", row);
  line->addStretch(1);
  line->addWidget(take_);
  line->addWidget(cancel);
  connect(take_, &QPushButton::clicked, this, &ReferencePicker::take);
  connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
  return row;
}

void ReferencePicker::setList(ReferenceList list, const QString& name) {
  list_ = std::move(list);
  const int count = static_cast<int>(list_.entries.size());
  file_->setText(name.isEmpty() ? tr("No list is open. Wardchalk ships none: a ward keeps its own.")
                                : tr("%1: %n entries", "", count).arg(outside(name)));
  findAgain();
}

void ReferencePicker::search(const QString& part) {
  search_->setText(part);
  search_->selectAll();
}

QString ReferencePicker::said() const { return loosed(said_->text()); }

/// Up and Down walk through the list while the keyboard stays in the search.
bool ReferencePicker::eventFilter(QObject* watched, QEvent* event) {
  if (watched == search_ && event->type() == QEvent::KeyPress) {
    const auto* key = static_cast<QKeyEvent*>(event);
    const int step = key->key() == Qt::Key_Down ? 1 : key->key() == Qt::Key_Up ? -1 : 0;
    if (step != 0 && found_->count() > 0) {
      found_->setCurrentRow(std::clamp(found_->currentRow() + step, 0, found_->count() - 1));
      return true;
    }
  }
  return QDialog::eventFilter(watched, event);
}

void ReferencePicker::findAgain() {
  groups_ = wardchalk::find(list_, search_->text().toStdString());
  const QSize itemSize(0, std::max(leastTarget, fontMetrics().height() + 8));
  {
    const QSignalBlocker quiet(found_);
    found_->clear();
    for (const ListGroup& group : groups_) {
      QStringList names{outside(group.medicine)};
      for (const std::string& name : group.alsoCalled) names << outside(name);
      const QString words = inOneLine({names.join(QStringLiteral(" = ")), outside(group.indication),
                                       QString::fromStdString(routeText(group.route))});
      auto* item = new QListWidgetItem(words, found_);
      item->setToolTip(plainTip(words));
      item->setSizeHint(itemSize);
    }
    const auto first = firstToLookAt(groups_, search_->text().toStdString(), order_);
    found_->setCurrentRow(first ? static_cast<int>(*first) : -1);
  }
  showGroup();
}

void ReferencePicker::showGroup() {
  bands_->clearSpans();
  bands_->setRowCount(0);
  chosen_.reset();
  chosenRow_ = -1;
  const int row = found_->currentRow();
  if (row < 0) {
    setReview(nullptr);
    setOther(nullptr);
    say(whyNoGroup());
    return allowTaking();
  }
  const ListGroup& group = groups_[static_cast<std::size_t>(row)];
  showBands(group);
  setOther(chosen_ && !isForOrdered(list_.entries[*chosen_], order_) ? &group : nullptr);
  allowTaking();
}

QString ReferencePicker::whyNoGroup() const {
  if (list_.entries.empty()) return tr("Open the ward's list, or make one from a table.");
  if (groups_.empty())
    return tr("Nothing in the list has this in its name. The reference can be typed in the form.");
  return tr("Type a part of the medicine's name, or choose in the list.");
}

void ReferencePicker::showBands(const ListGroup& group) {
  const BandChoice choice = bandFor(list_, group, child_, rules_);
  for (const JudgedEntry& judged : choice.entries) addBand(judged, choice.chosen == judged.entry);
  chosen_ = choice.chosen;
  setReview(chosen_ ? &list_.entries[*chosen_] : nullptr);
  say(held(sentence(choice, list_, today_)));
  QTimer::singleShot(0, this, &ReferencePicker::showChosen);  // once the rows have their heights
}

void ReferencePicker::addBand(const JudgedEntry& judged, bool chosen) {
  const ListEntry& entry = list_.entries[judged.entry];
  const Reference& reference = entry.reference;
  Case inputs;
  inputs.reference = reference;
  const auto fact = [&](std::string_view path) { return held(enteredWords(path, inputs)); };
  const std::string band = bandWords(reference);
  const std::string date = textOf(entry.reviewBy);
  const bool past = isPastReview(entry, today_);
  const QStringList cells{
      held(band.empty() ? wardchalk::say(PhraseId::list_everyChild) : band),
      (chosen ? QStringLiteral("✓ ") : QString()) + held(fitWords(judged)),
      reference.limitOnly ? held(wardchalk::say(PhraseId::list_limitOnly)) : fact(path::low),
      fact(path::high),
      held(maximumWords(reference)),
      fact(path::referenceSchedule),
      fact(path::referenceMaxDoses),
      held(sourceWords(entry)),
      held(past ? wardchalk::say(PhraseId::list_pastCell, {{"date", date}}) : date)};
  addRow(*bands_, narrow_ ? QStringList{oneBeneathTheOther(cells)} : cells);
  const int row = bands_->rowCount() - 1;
  QFont bold = bands_->font();
  bold.setBold(true);
  for (int column = 0; chosen && column < (narrow_ ? 1 : Column::source); ++column)
    bands_->item(row, column)->setFont(bold);
  if (past && !narrow_) bands_->item(row, Column::reviewBy)->setFont(bold);
  if (chosen) chosenRow_ = row;
  addInfusion(reference);
}

/// Limits of an infusion take a line of their own below the entry, for few entries state any.
void ReferencePicker::addInfusion(const Reference& reference) {
  const std::string limits = infusionWords(reference);
  if (limits.empty()) return;
  addRow(*bands_, {held(limits)});
  if (!narrow_) bands_->setSpan(bands_->rowCount() - 1, 0, 1, bands_->columnCount());
}

void ReferencePicker::shareColumns() {
  if (narrow_) return bands_->setColumnWidth(0, bands_->viewport()->width());
  bands_->resizeColumnToContents(Column::reviewBy);
  const double rest = bands_->viewport()->width() - bands_->columnWidth(Column::reviewBy);
  for (std::size_t i = 0; i < bandParts.size(); ++i)
    bands_->setColumnWidth(static_cast<int>(i), static_cast<int>(rest * bandParts[i]));
}

void ReferencePicker::showChosen() {
  shareColumns();
  if (chosenRow_ >= 0) bands_->scrollToItem(bands_->item(chosenRow_, 0), QAbstractItemView::PositionAtTop);
}

/// Where nine columns would cut their figures, each entry stands in one cell, line by line.
void ReferencePicker::followWidth() {
  const bool narrow = width() < leastForColumns * textScale();
  if (narrow == narrow_) return;
  narrow_ = narrow;
  for (int column = 1; column < bands_->columnCount(); ++column) bands_->setColumnHidden(column, narrow_);
  bands_->horizontalHeader()->setVisible(!narrow_);
  showGroup();
}

void ReferencePicker::resizeEvent(QResizeEvent* event) {
  QDialog::resizeEvent(event);
  followWidth();
  QTimer::singleShot(0, this, &ReferencePicker::showChosen);
}

void ReferencePicker::say(const QString& text) {
  if (said_->text() == breakable(text)) return;
  said_->setText(breakable(text));
  said_->setAccessibleName(loosed(text));
  QAccessibleEvent event(said_, QAccessible::NameChanged);
  QAccessible::updateAccessibility(&event);
  Announcer::of(*this).say(text, Announcer::Wait::whileTyping);
}

void ReferencePicker::setReview(const ListEntry* entry) {
  const bool past = entry && isPastReview(*entry, today_);
  useIt_->setChecked(false);
  review_->setVisible(past);
  if (past)
    pastReview_->setText(
        fromCore(wardchalk::say(PhraseId::list_pastReview, {{"date", textOf(entry->reviewBy)}})));
}

void ReferencePicker::setOther(const ListGroup* group) {
  useOther_->setChecked(false);
  useOther_->setVisible(group);
  const auto asked = [&](const QString& ordered, const QString& listed) {
    return fromCore(wardchalk::say(PhraseId::list_otherMedicine,
                                   {{"ordered", ordered.toStdString()}, {"listed", listed.toStdString()}}));
  };
  const QString ordered = fromCore(order_.medicine);
  const QString listed = group ? fromCore(group->medicine) : QString();
  const QString whole = group ? asked(ordered, listed) : QString();
  useOther_->setText(
      group ? withoutMnemonic(asked(shortened(ordered, mostLetters), shortened(listed, mostLetters)))
            : QString());
  useOther_->setAccessibleName(whole);
  useOther_->setToolTip(plainTip(whole));
}

bool ReferencePicker::mayTake() const {
  return chosen_ && found_->currentRow() >= 0 &&
         mayBeTaken(list_.entries[*chosen_], order_, today_, {useIt_->isChecked(), useOther_->isChecked()});
}

void ReferencePicker::allowTaking() { take_->setEnabled(mayTake()); }

void ReferencePicker::take() {
  if (!mayTake()) return;
  Q_EMIT taken(entriesOf(list_.entries[*chosen_], today_));
  accept();
}

}  // namespace wardchalk::ui
