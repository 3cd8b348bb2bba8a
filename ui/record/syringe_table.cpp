#include "ui/record/syringe_table.h"

#include <QGridLayout>
#include <QLineEdit>
#include <algorithm>

#include "core/number/decimal_text.h"
#include "core/record/rules_file.h"
#include "core/words/sentences.h"
#include "ui/form/choice_box.h"
#include "ui/form/quiet_line.h"
#include "ui/theme/buttons.h"
#include "ui/theme/plain_label.h"
#include "ui/theme/target.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

QString inMl(const Number& value) { return fromCore(exactText(value) + " mL"); }

}  // namespace

SyringeTable::SyringeTable(QWidget* parent)
    : QWidget(parent),
      grid_(new QGridLayout(this)),
      add_(roomyButton(tr("Add a syringe"), "syringe-add", this)),
      line_(new QuietLine(this)) {
  setObjectName(QStringLiteral("syringes"));
  grid_->setContentsMargins(0, 0, 0, 0);
  grid_->setHorizontalSpacing(8);
  grid_->setVerticalSpacing(4);
  const QStringList headings{tr("Holds"), tr("Marks every"), tr("Used for")};
  for (int i = 0; i < headings.size(); ++i) grid_->addWidget(new PlainLabel(headings[i], this), 0, i);
  grid_->setColumnStretch(2, 1);
  connect(add_, &QPushButton::clicked, this, [this] {
    addRow(nullptr);
    place();
    rows_.back().holds->setFocus(Qt::TabFocusReason);
    read();
  });
}

void SyringeTable::show(const std::vector<Syringe>& syringes) {
  while (!rows_.empty()) removeRow(rows_.back().holds);
  for (const Syringe& syringe : syringes) addRow(&syringe);
  place();
  read();
}

void SyringeTable::addRow(const Syringe* syringe) {
  const Row row{new QLineEdit(this), new QLineEdit(this), new ChoiceBox(this),
                roomyButton(tr("Remove"), "", this)};
  row.kind->addChoice("oral", tr("by mouth and by tube"));
  row.kind->addChoice("injection", tr("injections"));
  row.kind->setMinimumContentsLength(18);
  for (QWidget* box : {static_cast<QWidget*>(row.holds), static_cast<QWidget*>(row.marks),
                       static_cast<QWidget*>(row.kind), static_cast<QWidget*>(row.remove)})
    box->setMinimumHeight(leastTarget);
  if (syringe) {
    row.holds->setText(inMl(syringe->holdsMl));
    row.marks->setText(inMl(syringe->marksMl));
    row.kind->choose(syringe->kind == SyringeKind::oral ? "oral" : "injection");
  }
  for (QLineEdit* box : {row.holds, row.marks})
    connect(box, &QLineEdit::textEdited, this, &SyringeTable::read);
  connect(row.kind, &ChoiceBox::passed, this, &SyringeTable::read);
  connect(row.kind, &ChoiceBox::made, this, &SyringeTable::read);
  connect(row.remove, &QPushButton::clicked, this, [this, holds = row.holds] {
    removeRow(holds);
    place();
    (rows_.empty() ? static_cast<QWidget*>(add_) : rows_.front().holds)->setFocus(Qt::TabFocusReason);
    read();
  });
  rows_.push_back(row);
}

void SyringeTable::removeRow(const QLineEdit* holds) {
  const auto row =
      std::find_if(rows_.begin(), rows_.end(), [&](const Row& one) { return one.holds == holds; });
  if (row == rows_.end()) return;
  for (QWidget* box : {static_cast<QWidget*>(row->holds), static_cast<QWidget*>(row->marks),
                       static_cast<QWidget*>(row->kind), static_cast<QWidget*>(row->remove)}) {
    box->hide();
    box->deleteLater();  // one of them may be telling of its click
  }
  rows_.erase(row);
}

void SyringeTable::place() {
  int at = 1;
  QWidget* last = add_;  // where it stands in the order of Tab the rows come, and it after them
  for (const Row& row : rows_) {
    int column = 0;
    for (QWidget* box : {static_cast<QWidget*>(row.holds), static_cast<QWidget*>(row.marks),
                         static_cast<QWidget*>(row.kind), static_cast<QWidget*>(row.remove)}) {
      grid_->addWidget(box, at, column++);
      box->show();
      setTabOrder(last, box);
      last = box;
    }
    ++at;
  }
  grid_->addWidget(line_, at, 0, 1, 4);
  grid_->addWidget(add_, at + 1, 0, 1, 2);
  if (!rows_.empty()) {
    setTabOrder(rows_.front().holds, add_);  // Qt 6.4 leaves a pair that meets round the end of the chain
    setTabOrder(last, add_);
  }
  nameRows();
}

void SyringeTable::nameRows() {
  int n = 0;
  for (const Row& row : rows_) {
    const QString which = tr("Syringe %1").arg(++n);
    row.holds->setAccessibleName(tr("%1, holds").arg(which));
    row.marks->setAccessibleName(tr("%1, marks every").arg(which));
    row.kind->setAccessibleName(tr("%1, used for").arg(which));
    row.remove->setAccessibleName(tr("Remove %1").arg(which));
    const QString id = QStringLiteral("syringe-%1:").arg(n);
    row.holds->setObjectName(id + QStringLiteral("holds"));
    row.marks->setObjectName(id + QStringLiteral("marks"));
    row.kind->setObjectName(id + QStringLiteral("kind"));
    row.remove->setObjectName(id + QStringLiteral("remove"));
  }
}

Result<Syringe> SyringeTable::readRow(const Row& row) const {
  if (!row.kind->isChosen()) return Refusal{RefusalCode::wordUnknown, {}, "oral, injection", "syringes.kind"};
  const SyringeKind kind = row.kind->chosen() == "oral" ? SyringeKind::oral : SyringeKind::injection;
  return readSyringe(row.holds->text().toStdString(), row.marks->text().toStdString(), kind);
}

std::optional<std::vector<Syringe>> SyringeTable::syringes() const {
  std::vector<Syringe> all;
  for (const Row& row : rows_) {
    Result<Syringe> read = readRow(row);
    if (!read) return std::nullopt;
    all.push_back(*std::move(read));
  }
  if (all.empty()) return std::nullopt;
  std::stable_sort(all.begin(), all.end(), [](const Syringe& a, const Syringe& b) {
    return a.kind != b.kind ? a.kind < b.kind : a.holdsMl < b.holdsMl;
  });
  return all;
}

QString SyringeTable::whyRefused() const { return line_->said(); }

void SyringeTable::read() {
  QString said = rows_.empty() ? tr("At least one syringe is needed.") : QString();
  for (std::size_t i = 0; i < rows_.size() && said.isEmpty(); ++i) {
    const Result<Syringe> one = readRow(rows_[i]);
    if (one) continue;
    const QString why =
        rows_[i].kind->isChosen() ? fromCore(sentence(one.refusal())) : tr("Choose what it is used for.");
    said = tr("Syringe %1: %2").arg(i + 1).arg(why);
  }
  line_->say(said, said.isEmpty() ? QuietLine::Tone::quiet : QuietLine::Tone::refused);
  Q_EMIT changed();
}

void SyringeTable::focusRefused() {
  for (const Row& row : rows_) {
    const Result<Syringe> one = readRow(row);
    if (one) continue;
    const bool marks = one.refusal().path == "syringes.marks";
    return (row.kind->isChosen() ? static_cast<QWidget*>(marks ? row.marks : row.holds) : row.kind)
        ->setFocus(Qt::TabFocusReason);
  }
  add_->setFocus(Qt::TabFocusReason);
}

}  // namespace wardchalk::ui
