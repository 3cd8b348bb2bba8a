#include "ui/record/import_report.h"

#include <QHeaderView>
#include <QListWidget>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "core/number/unseen_text.h"
#include "core/record/list_review.h"
#include "core/words/sentences.h"
#include "ui/record/plain_table.h"
#include "ui/theme/breaking_delegate.h"
#include "ui/theme/buttons.h"
#include "ui/theme/plain_label.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

constexpr QSize reportSize(860, 520);

QString whoseRow(const RefusedRow& row) {
  QStringList parts{outside(withUnseenNamed(row.medicine)), outside(withUnseenNamed(row.route))};
  parts.removeAll(QString());
  return parts.join(QStringLiteral(", "));
}

/// What is to be looked at before the list is used, a line each.
QListWidget* reviewLines(const std::vector<std::string>& lines, QWidget* parent) {
  auto* list = new QListWidget(parent);
  list->setObjectName(QStringLiteral("list-review"));
  list->setAccessibleName(ImportReport::tr("To look at before the list is used"));
  list->setWordWrap(true);
  list->setItemDelegate(new BreakingDelegate(list));
  for (const std::string& line : lines) list->addItem(held(line));
  return list;
}

QTableWidget* refusedRows(const std::vector<RefusedRow>& rows, QWidget* parent) {
  auto* table = plainTable({ImportReport::tr("Row"), ImportReport::tr("Medicine, route"),
                            ImportReport::tr("Column"), ImportReport::tr("Why it was refused")},
                           ImportReport::tr("Rows that were refused"), parent);
  table->setObjectName(QStringLiteral("refused"));
  for (const RefusedRow& row : rows)
    addRow(*table, {QString::number(row.row), whoseRow(row), fromCore(placeText(row.refusal)),
                    fromCore(sentence(row.refusal))});
  table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  table->horizontalHeader()->setSectionResizeMode(3, QHeaderView::Stretch);
  table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  return table;
}

}  // namespace

ImportReport::ImportReport(const ReferenceImport& import, const Date& today, QWidget* parent)
    : QDialog(parent) {
  const int good = static_cast<int>(import.list.entries.size());
  const int refused = static_cast<int>(import.refused.size());
  setWindowTitle(tr("What the table holds"));
  setObjectName(QStringLiteral("import-report"));
  auto* column = new QVBoxLayout(this);
  auto* label =
      new PlainLabel(tr("%n entries can be read.", "", good) + QLatin1Char('\n') +
                         (refused == 0 ? tr("No row was refused.")
                                       : tr("%n &rows were refused and are left out:", "", refused)),
                     this);
  label->setObjectName(QStringLiteral("summary"));
  column->addWidget(label);
  if (refused > 0) {
    auto* table = refusedRows(import.refused, this);
    label->setBuddy(table);
    column->addWidget(table, 1);
  }
  const std::vector<std::string> review = listReview(import.list, today);
  if (!review.empty()) {
    auto* heading = new PlainLabel(tr("To &look at before the list is used:"), this);
    auto* lines = reviewLines(review, this);
    heading->setBuddy(lines);
    column->addWidget(heading);
    column->addWidget(lines, 1);
  }
  auto* line = new QHBoxLayout;
  auto* keep = plainButton(refused == 0 ? tr("&Save the list of %n entries …", "", good)
                                        : tr("&Keep the good entries and save the list …"),
                           "keep", this);
  auto* leave = plainButton(tr("Keep &nothing"), "leave", this);
  keep->setEnabled(good > 0);
  line->addStretch(1);
  line->addWidget(keep);
  line->addWidget(leave);
  column->addLayout(line);
  connect(keep, &QPushButton::clicked, this, &QDialog::accept);
  connect(leave, &QPushButton::clicked, this, &QDialog::reject);
  if (refused > 0 || !review.empty()) resize(reportSize);
  leave->setFocus();
}

}  // namespace wardchalk::ui
