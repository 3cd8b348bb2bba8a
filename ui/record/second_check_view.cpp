#include "ui/record/second_check_view.h"

#include <QHeaderView>
#include <QScrollArea>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "core/words/phrasebook.h"
#include "ui/access/answers.h"
#include "ui/form/field_table.h"
#include "ui/record/plain_table.h"
#include "ui/theme/board_palette.h"
#include "ui/theme/breaking_delegate.h"
#include "ui/theme/buttons.h"
#include "ui/theme/flow_layout.h"
#include "ui/theme/letters.h"
#include "ui/theme/plain_label.h"
#include "ui/theme/plain_scroll_bar.h"
#include "ui/theme/target.h"
#include "ui/theme/text.h"
#include "ui/theme/tick_box.h"

namespace wardchalk::ui {

namespace {

constexpr int buttonHeight = 36;
constexpr int rowAir = 6;
constexpr int leastRows = 5;  // of the table, its heading among them
constexpr double summaryScale = 1.5;
constexpr int apartRole =
    Qt::UserRole;  // whether the row is one of those that are not the same; a heading has none

/// Draws headings bold, and what is not the same bold on a ground of its own; the sign and the word stand for
/// themselves.
class ComparedDelegate : public BreakingDelegate {
 public:
  using BreakingDelegate::BreakingDelegate;

 protected:
  void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override {
    BreakingDelegate::initStyleOption(option, index);
    const QVariant apart = index.data(apartRole);
    if (apart.isValid() && !apart.toBool()) return;
    option->font.setBold(true);
    option->fontMetrics = QFontMetrics(option->font);
    if (!apart.toBool()) return;
    const BoardPalette& inks = boardPalette(schemeFor(option->palette));
    option->backgroundBrush = inks[Ink::lit];
    option->palette.setColor(QPalette::Text, inks[Ink::text]);
  }
};

/// An entry as the form shows it: the words of a choice, "yes" of a flag.
QString asShown(const FieldSpec& spec, const std::string& text) {
  for (const ChoiceWord& choice : spec.choices)
    if (choice.id == text) return wordsOf(choice);
  return held(enteredText(spec.path, text));
}

QString sign(Agreement agreement) { return agrees(agreement) ? QStringLiteral("=") : QStringLiteral("≠"); }

}  // namespace

SecondCheckView::SecondCheckView(QWidget* parent)
    : QWidget(parent),
      summary_(new PlainLabel(this)),
      todo_(new PlainLabel(this)),
      table_(new QTableWidget(this)),
      alone_(new TickBox(fromCore(say(PhraseId::second_alone)), this)) {
  setObjectName(QStringLiteral("second-check"));
  giveRole(this, QAccessible::Grouping, tr("Second check"));
  auto* column = new QVBoxLayout(buildPage());
  column->setContentsMargins(16, 12, 16, 12);
  column->setSpacing(8);
  summary_->setObjectName(QStringLiteral("second-summary"));
  shareLetters(summary_, summaryScale, true);
  QLabel* cannot = new PlainLabel(fromCore(say(PhraseId::second_cannotFind)), this);
  cannot->setObjectName(QStringLiteral("second-cannot-find"));
  for (QLabel* label : {summary_, todo_, cannot}) label->setWordWrap(true);
  table_->setObjectName(QStringLiteral("second-table"));
  table_->setAccessibleName(tr("The two entries side by side"));
  table_->setColumnCount(4);
  table_->setHorizontalHeaderLabels({tr("Compared"), tr("What"), tr("First person"), tr("Second person")});
  readByRows(*table_);
  table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  table_->setItemDelegate(new ComparedDelegate(table_));
  table_->setVerticalScrollBar(new PlainScrollBar(Qt::Vertical));
  column->addWidget(summary_);
  column->addWidget(todo_);
  column->addWidget(table_, 1);
  table_->setMinimumHeight(leastRows * leastTarget);
  column->addWidget(cannot);
  alone_->setObjectName(QStringLiteral("second-alone"));
  alone_->setMinimumHeight(leastTarget);
  column->addWidget(alone_);
  auto* buttons = new QWidget(this);
  auto* row = new FlowLayout(buttons);
  row->pushRight();
  buildButtons(row);
  column->addWidget(buttons);
}

/// A small window with large letters scrolls, rather than cut what is said.
QWidget* SecondCheckView::buildPage() {
  auto* whole = new QVBoxLayout(this);
  whole->setContentsMargins(0, 0, 0, 0);
  auto* area = new QScrollArea(this);
  area->setFrameShape(QFrame::NoFrame);
  area->setVerticalScrollBar(new PlainScrollBar(Qt::Vertical));
  area->setWidgetResizable(true);
  area->setFocusPolicy(Qt::NoFocus);
  auto* page = new QWidget;
  area->setWidget(page);
  whole->addWidget(area);
  return page;
}

void SecondCheckView::buildButtons(FlowLayout* row) {
  const auto add = [&](const char* name, const QString& text, void (SecondCheckView::*told)()) {
    auto* button = roomyButton(text, name, this, buttonHeight);
    button->setAutoDefault(true);
    connect(button, &QPushButton::clicked, this, told);
    row->addWidget(button);
    return button;
  };
  add("second-correct-first", tr("The firs&t person corrects"), &SecondCheckView::firstCorrects);
  add("second-correct-second", tr("The secon&d person corrects"), &SecondCheckView::secondCorrects);
  finish_ = add("second-finish", tr("&Record this on the sheet"), &SecondCheckView::finished);
  connect(alone_, &QCheckBox::toggled, finish_, &QPushButton::setEnabled);
  leave_ = add("second-leave", fromCore(say(PhraseId::second_leave)), &SecondCheckView::left);
}

SecondCheckView::Row SecondCheckView::rowOf(const EntryCompared& entry) const {
  const FieldSpec& spec = fieldSpec(entry.path);
  return {headingOf(spec.group) + QStringLiteral(": ") + nameOf(spec), asShown(spec, entry.first),
          asShown(spec, entry.second), entry.agreement};
}

SecondCheckView::Row SecondCheckView::rowOf(const OutcomeCompared& outcome) const {
  return {fromCore(outcomeName(outcome.outcome)), held(outcome.first), held(outcome.second),
          outcome.agreement};
}

void SecondCheckView::show(const SecondCheck& check, bool alone, bool differenceStays) {
  empty();
  const bool settled = check.agree();
  const PhraseId left = !differenceStays ? PhraseId::second_leave
                        : settled        ? PhraseId::second_leaveDiffered
                                         : PhraseId::second_leaveDiffers;
  leave_->setText(fromCore(say(left)));
  alone_->setVisible(alone);
  finish_->setEnabled(!alone);
  summary_->setText(held(secondCheckSummary(check)));
  todo_->setText(fromCore(say(settled ? PhraseId::second_nowAlike : PhraseId::second_whatToDo)));
  todo_->setVisible(!settled || differenceStays);
  addPart(tr("Verdict"), {{tr("Verdict"), held(check.firstVerdict), held(check.secondVerdict),
                           check.sameVerdict ? Agreement::same : Agreement::differs}});
  QList<Row> entries, outcomes;
  for (const EntryCompared& entry : check.entries) entries << rowOf(entry);
  for (const OutcomeCompared& outcome : check.outcomes) outcomes << rowOf(outcome);
  addPart(tr("As entered"), entries);
  addPart(tr("As worked out"), outcomes);
  airRows();
  table_->setCurrentCell(1, 0, QItemSelectionModel::NoUpdate);
}

QString SecondCheckView::said() const {
  return todo_->isHidden() ? summary_->text() : summary_->text() + u' ' + todo_->text();
}

void SecondCheckView::empty() {
  summary_->clear();
  todo_->clear();
  alone_->setChecked(false);
  table_->setRowCount(0);
}

void SecondCheckView::addPart(const QString& heading, QList<Row> rows) {
  std::stable_sort(rows.begin(), rows.end(),
                   [](const Row& a, const Row& b) { return !agrees(a.agreement) && agrees(b.agreement); });
  const int at = table_->rowCount();
  table_->insertRow(at);
  auto* item = new QTableWidgetItem(heading);
  item->setFlags(Qt::ItemIsEnabled);
  table_->setItem(at, 0, item);
  table_->setSpan(at, 0, 1, table_->columnCount());
  for (const Row& row : std::as_const(rows)) addRow(row);
}

void SecondCheckView::addRow(const Row& row) {
  const int at = table_->rowCount();
  table_->insertRow(at);
  const QString words = fromCore(agreementWords(row.agreement));
  const QString none = tr("nothing", "entered");
  const auto orNone = [&](const QString& text) { return text.isEmpty() ? QStringLiteral("–") : text; };
  const QStringList cells{sign(row.agreement) + u' ' + words, row.what, orNone(row.first),
                          orNone(row.second)};
  for (int i = 0; i < cells.size(); ++i) {
    auto* item = new QTableWidgetItem(cells[i]);
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
    item->setData(apartRole, !agrees(row.agreement));
    table_->setItem(at, i, item);
  }
  const auto said = [&](const QString& text) { return text.isEmpty() ? none : text; };
  table_->item(at, 0)->setData(
      Qt::AccessibleTextRole,
      tr("%1: %2. First person: %3. Second person: %4.", "row of a second check, read out")
          .arg(row.what, words, said(row.first), said(row.second)));
}

/// Rows as high as their words, with some air between them.
void SecondCheckView::airRows() {
  table_->resizeRowsToContents();
  for (int row = 0; row < table_->rowCount(); ++row)
    table_->setRowHeight(row, table_->rowHeight(row) + rowAir);
}

void SecondCheckView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) airRows();
}

void SecondCheckView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  airRows();
  table_->setFocus(Qt::OtherFocusReason);
}

}  // namespace wardchalk::ui
