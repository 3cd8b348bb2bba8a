#include "ui/shell/practice_desk.h"

#include <QPushButton>
#include <QRandomGenerator>

#include "core/practice/sessions/set_file.h"
#include "core/record/text_file.h"
#include "core/words/sentences.h"
#include "ui/practice/practice_sheet.h"
#include "ui/practice/practice_window.h"
#include "ui/shell/case_document.h"
#include "ui/shell/file_dialogs.h"
#include "ui/theme/plain_message.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

/// Short enough to be read out to a class.
constexpr int mostSeed = 100000;

/// The desktop's own dialogs; paper as the settings have it.
class DesktopPracticeFiles : public PracticeFiles {
 public:
  explicit DesktopPracticeFiles(Settings& settings) : settings_(settings) {}

  [[nodiscard]] QString setToOpen(QWidget* parent) override {
    return ask(parent, {FileQuestion::open, PracticeDesk::tr("Open a set"), setFilter(), {}});
  }
  [[nodiscard]] QString setToSave(QWidget* parent) override {
    return ask(parent, {FileQuestion::save, PracticeDesk::tr("Save the set"), setFilter(),
                        PracticeDesk::tr("practice-set.json")});
  }
  [[nodiscard]] QString tableToSave(QWidget* parent) override {
    return ask(parent, {FileQuestion::save, PracticeDesk::tr("Save results for a spreadsheet"),
                        PracticeDesk::tr("Tables (*.csv)"), PracticeDesk::tr("practice-results.csv")});
  }
  [[nodiscard]] QString pdfToSave(QWidget* parent, const QString& suggested) override {
    return ask(parent, {FileQuestion::save, PracticeDesk::tr("Save as PDF"), PracticeDesk::tr("PDF (*.pdf)"),
                        suggested});
  }
  [[nodiscard]] bool mayLose(QWidget* parent, const QString& question) override {
    PlainMessage box(QMessageBox::Question, PracticeDesk::tr("Practice"), question, parent);
    const auto* leave = box.addButton(PracticeDesk::tr("&Leave it"), QMessageBox::DestructiveRole);
    QPushButton* stay = box.addButton(PracticeDesk::tr("&Go on practising"), QMessageBox::RejectRole);
    box.setDefaultButton(stay);
    box.setEscapeButton(stay);
    box.exec();
    return box.clickedButton() == leave;
  }
  void tell(QWidget* parent, const QString& title, const QString& text) override {
    PlainMessage box(QMessageBox::NoIcon, title, text, parent);
    box.setStandardButtons(QMessageBox::Close);
    box.exec();
  }
  [[nodiscard]] PaperSize paper() const override { return settings_.paper(); }
  void setPaper(PaperSize size) override { settings_.setPaper(size); }

 private:
  static QString ask(QWidget* parent, const FileQuestion& question) {
    return askForFiles(parent, question).value(0);
  }
  static QString setFilter() { return PracticeDesk::tr("Practice sets (*.json)"); }

  Settings& settings_;
};

QString refusalText(const QString& file, const Refusal& refusal) {
  const QString place =
      refusal.path.empty() ? QString() : fromCore(placeText(refusal)) + QStringLiteral(": ");
  return outside(file) + QStringLiteral(": ") + place +
         QString::fromStdString(sentence(refusal, englishPhrases()));
}

}  // namespace

PracticeDesk::PracticeDesk(QObject* parent, Settings& settings, const Phrasebook& book)
    : QObject(parent),
      settings_(settings),
      book_(book),
      files_(std::make_unique<DesktopPracticeFiles>(settings)) {}

PracticeDesk::~PracticeDesk() { delete window_; }

PracticeWindow* PracticeDesk::window() const { return window_; }

void PracticeDesk::open() {
  if (!window_) {
    const auto seed = static_cast<std::uint64_t>(QRandomGenerator::global()->bounded(1, mostSeed));
    window_ = new PracticeWindow(*files_, seed, settings_.zoom(), book_);
    window_->setAttribute(Qt::WA_DeleteOnClose);
  }
  window_->show();
  window_->raise();
  window_->activateWindow();
}

QString writePracticeSheet(const QString& setFile, const QString& pdf, bool withKey, PaperSize paper) {
  if (const auto apart = checkNotInput(nativePath(pdf), nativePath(setFile)); !apart)
    return refusalText(pdf, apart.refusal());
  const Result<std::string> text = readTextFile(nativePath(setFile));
  if (!text) return refusalText(setFile, text.refusal());
  const Result<PracticeSet> set = readSet(*text);
  if (!set) return refusalText(setFile, set.refusal());
  const auto kind = withKey ? PracticeSheetKind::key : PracticeSheetKind::questions;
  const auto written = writePracticePdf(pdf, *set, kind, paper, englishPhrases());
  return written ? QString() : refusalText(pdf, written.refusal());
}

}  // namespace wardchalk::ui
