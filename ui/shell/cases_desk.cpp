#include "ui/shell/cases_desk.h"

#include <QFileInfo>
#include <QTimer>

#include "core/check/work_out.h"
#include "core/words/sentences.h"
#include "ui/paper/pdf_book.h"
#include "ui/record/cases_window.h"
#include "ui/shell/actions.h"
#include "ui/shell/main_window.h"
#include "ui/shell/other_windows.h"
#include "ui/shell/sheet_desk.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

CasesDesk::CasesDesk(MainWindow& window, const HouseRules& rules, Settings& settings, Dialogs& dialogs)
    : QObject(&window), window_(window), rules_(rules), settings_(settings), dialogs_(dialogs) {}

CasesDesk::~CasesDesk() = default;

void CasesDesk::bind(Actions& actions) {
  actions.bind(ActionId::severalCases, [this] { show(); });
  actions.bind(ActionId::nextCase, [this] { step(1); });
  actions.bind(ActionId::previousCase, [this] { step(-1); });
}

void CasesDesk::show() {
  if (!cases_) {
    pdf_.reset();
    cases_ = new CasesWindow(rules_, &window_);
    cases_->setAttribute(Qt::WA_DeleteOnClose);
    keepWhenCovered(cases_, NewChildThen::goes);
    connect(cases_, &CasesWindow::openWanted, this, &CasesDesk::openRow);
    connect(cases_, &CasesWindow::filesWanted, this, &CasesDesk::chooseFiles);
    connect(cases_, &CasesWindow::tableWanted, this, &CasesDesk::saveTable);
    connect(cases_, &CasesWindow::sheetsWanted, this, &CasesDesk::saveSheets);
    connect(cases_, &CasesWindow::failed, this, [this](const Refusal& refusal) {
      tell(tr("The table was not saved"), QString::fromStdString(placedSentence(refusal)));
    });
  }
  cases_->show();
  cases_->raise();
  cases_->activateWindow();
}

/// Before any are open, the way there is the window where they are opened.
void CasesDesk::step(int by) {
  if (cases_)
    cases_->step(by);
  else
    show();
}

/// The list makes room for the case: at the usual size of a screen it would lie over it.
void CasesDesk::openRow(int at) {
  const CaseRow& row = cases_->model().rows()[static_cast<std::size_t>(at)];
  const Result<CaseFile> read = readRow(row);
  if (!read) {
    cases_->select(at);  // else stepping would come to it again and again
    return tell(tr("This case cannot be opened"), QString::fromStdString(placedSentence(read.refusal())));
  }
  if (!window_.openRow(read->entries)) return;
  cases_->select(at);
  cases_->hide();
  window_.raise();
  window_.activateWindow();
}

void CasesDesk::chooseFiles() {
  const QStringList files =
      dialogs_.files(cases_, {FileQuestion::openSeveral,
                              tr("Open several cases"),
                              tr("Cases and tables (*.wardchalk *.json *.jsonl *.ndjson *.csv)"),
                              {}});
  if (!files.isEmpty()) cases_->read(files);
}

void CasesDesk::saveTable() {
  const QString file = dialogs_.file(cases_, {FileQuestion::save, tr("Save the results as a table"),
                                              tr("Tables (*.csv)"), tr("results.csv")});
  if (!file.isEmpty()) cases_->writeTable(file);
}

void CasesDesk::saveSheets() {
  const QString file = dialogs_.file(
      cases_, {FileQuestion::save, tr("Save the sheet as PDF"), tr("PDF (*.pdf)"), tr("worksheets.pdf")});
  if (file.isEmpty()) return;
  if (const auto writable = cases_->checkTarget(file); !writable) return tellUnsaved(writable.refusal());
  pdf_ = std::make_unique<PdfBook>(file, settings_.paper());
  pdfFile_ = QFileInfo(file).fileName();
  leftOut_.clear();
  cases_->beginPrinting();
  printNext(0);
}

/// One sheet at a time, so that the window answers in between: letters can be laid out in its own thread
/// alone.
void CasesDesk::printNext(std::size_t at) {
  if (!cases_ || !pdf_) return pdf_.reset();  // the window was closed meanwhile
  const auto& rows = cases_->model().rows();
  if (at >= rows.size()) return endPrinting();
  if (!cases_->showPrinting(static_cast<int>(at), static_cast<int>(rows.size()))) {
    pdf_.reset();
    return cases_->endPrinting();
  }
  const Result<CaseFile> read = readRow(rows[at]);
  if (!read) leftOut_ << cases_->model().placeOf(static_cast<int>(at));
  if (read)
    if (!pdf_->add(sheetContent(workOut(read->inputs, rules_), madeNow()))) return endPrinting();
  QTimer::singleShot(0, this, [this, at] { printNext(at + 1); });
}

void CasesDesk::endPrinting() {
  const bool none = pdf_->isEmpty();
  const Result<Done> written = none ? Done{} : pdf_->finish();
  pdf_.reset();
  cases_->endPrinting();
  if (none) return tell(tr("The sheets were not saved"), tr("No case can be read."));
  if (!written) return tellUnsaved(written.refusal());
  const auto all = static_cast<int>(cases_->model().rows().size());
  QString said =
      tr("%n sheets saved in %1.", "", all - static_cast<int>(leftOut_.size())).arg(outside(pdfFile_));
  if (!leftOut_.isEmpty())
    said += u' ' + tr("Left out, cannot be read: %1.").arg(leftOut_.join(QStringLiteral("; ")));
  cases_->say(said);
}

void CasesDesk::tellUnsaved(const Refusal& refusal) {
  tell(tr("The sheets were not saved"), QString::fromStdString(placedSentence(refusal)));
}

void CasesDesk::tell(const QString& title, const QString& text) {
  const bool overList = cases_ && cases_->isVisible();
  dialogs_.tell(overList ? static_cast<QWidget*>(cases_.data()) : &window_, title, text);
}

}  // namespace wardchalk::ui
