#include "ui/practice/set_page.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <QWheelEvent>

#include "core/number/unseen_text.h"
#include "core/practice/sessions/set_file.h"
#include "core/record/text_file.h"
#include "core/words/sentences.h"
#include "ui/practice/plan_form.h"
#include "ui/practice/practice_look.h"
#include "ui/practice/practice_sheet.h"
#include "ui/practice/terms_form.h"
#include "ui/theme/native_path.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

/// One of two words; the wheel never changes it.
class WordBox : public QComboBox {
 public:
  WordBox(const QStringList& words, QWidget* parent) : QComboBox(parent) {
    setFocusPolicy(Qt::StrongFocus);
    addItems(words);
    setMinimumHeight(practiceTarget);
  }

 protected:
  void wheelEvent(QWheelEvent* event) override { event->ignore(); }
};

QString setFilter() { return SetPage::tr("Practice sets (*.json)"); }

}  // namespace

FileQuestion openSetQuestion() { return {FileQuestion::open, SetPage::tr("Open a set"), setFilter(), {}}; }

std::optional<PracticeSet> openSetFile(const QString& file, Questions& questions, QWidget* parent) {
  const auto refuse = [&](const Refusal& refusal) {
    questions.tell(parent, SetPage::tr("The set was not opened"), refusedFile(file, refusal));
    return std::nullopt;
  };
  const Result<std::string> text = readTextFile(nativePath(file));
  if (!text) return refuse(text.refusal());
  const Result<PracticeSet> plan = readSet(*text);
  if (!plan) return refuse(plan.refusal());
  return *plan;
}

SetPage::SetPage(Questions& questions, PaperSize paper, QWidget* parent)
    : PracticePage("set-page", parent), questions_(questions) {
  column()->addWidget(wordsIn(inside(), tr("A set for a class"), 1.6, true));
  column()->addWidget(
      wordsIn(inside(),
              tr("Whoever opens the set file gets the same problems. On paper they come as questions "
                 "with room for the working, and as a key with every line worked. Students write the code of "
                 "their seat, never a name, and save their results as a table (CSV)."),
              1.05));
  form_ = new PlanForm(PlanForm::Reader::preceptor, inside());
  buildTitle();
  terms_ = new TermsForm(form_);
  form_->belowTopics()->addWidget(terms_);
  form_->tabBelowTopics(terms_->stops());
  column()->addWidget(form_);
  column()->addStretch(1);
  missing_ = quietWordsIn(inside(), {});
  missing_->setObjectName(QStringLiteral("set-missing"));
  missing_->setAlignment(Qt::AlignRight);
  column()->addWidget(missing_);
  column()->addWidget(buildFoot(paper));
  connect(form_, &PlanForm::changed, this, &SetPage::tellWhatIsMissing);
  tellWhatIsMissing();
}

void SetPage::buildTitle() {
  title_ = new QLineEdit(form_);
  title_->setObjectName(QStringLiteral("set-title"));
  connect(title_, &QLineEdit::textChanged, this, &SetPage::tellWhatIsMissing);
  form_->addField(tr("&Title"), tr("Title of the set"), title_);
}

void SetPage::setPaper(PaperSize size) { paper_->setCurrentIndex(static_cast<int>(size)); }

QWidget* SetPage::buildFoot(PaperSize paper) {
  auto* foot = new QWidget(inside());
  auto* flow = new FlowLayout(foot);
  const auto add = [&](const QString& text, const char* name, auto what) {
    QPushButton* button = addButton(flow, text, name);
    connect(button, &QPushButton::clicked, this, what);
    return button;
  };
  add(tr("&Back"), "set-back", [this] { Q_EMIT backWanted(); });
  add(tr("&Open a set …"), "set-open", [this] { openSet(); });
  flow->pushRight();
  auto* label = wordsIn(foot, tr("&Paper"));
  label->setWordWrap(false);
  paper_ = new WordBox({tr("A4"), tr("Letter")}, foot);
  paper_->setObjectName(QStringLiteral("set-paper"));
  paper_->setAccessibleName(tr("Paper"));
  paper_->setCurrentIndex(static_cast<int>(paper));
  label->setBuddy(paper_);
  flow->addWidget(label);
  flow->addWidget(paper_);
  questionsPdf_ = add(tr("&Questions as PDF …"), "set-questions", [this] { savePdf(false); });
  keyPdf_ = add(tr("&Key as PDF …"), "set-key", [this] { savePdf(true); });
  save_ = add(tr("&Save the set …"), "set-save", [this] { saveSet(); });
  connect(paper_, &QComboBox::currentIndexChanged, this,
          [this](int index) { Q_EMIT paperChosen(static_cast<PaperSize>(index)); });
  return foot;
}

/// What keeps the set from being saved. A title that no set file could hold is one of it, and stays as it was
/// typed.
QString SetPage::whatIsMissing() const {
  const std::string title = title_->text().toStdString();
  if (title.size() > longestSetTitle) return tr("The title is too long. Write it in fewer words.");
  const auto refusal = refusedUnseen(title);
  return refusal ? fromCore(sentence(*refusal)) : form_->missing();
}

void SetPage::tellWhatIsMissing() {
  const QString missing = whatIsMissing();
  missing_->setText(missing);
  for (QPushButton* button : {save_, questionsPdf_, keyPdf_}) button->setEnabled(missing.isEmpty());
}

void SetPage::setPlan(const PracticeSet& plan) {
  form_->setPlan(plan);
  title_->setText(fromCore(plan.title));
  terms_->setTerms(plan);
}

void SetPage::arrange(int room) { form_->setRoom(room); }

PracticeSet SetPage::plan() const {
  PracticeSet plan = form_->plan();
  plan.title = title_->text().toStdString();
  terms_->writeInto(plan);
  return plan;
}

void SetPage::openSet() {
  const QString file = questions_.file(window(), openSetQuestion());
  if (file.isEmpty()) return;
  if (const auto plan = openSetFile(file, questions_, window())) setPlan(*plan);
}

void SetPage::saveSet() {
  const QString file = questions_.file(
      window(), {FileQuestion::save, tr("Save the set"), setFilter(), tr("practice-set.json")});
  if (file.isEmpty()) return;
  std::string text;
  writeSet(text, plan());
  text += '\n';
  if (const auto written = writeTextFile(nativePath(file), text); !written)
    questions_.tell(window(), tr("The set was not saved"), refusedFile(file, written.refusal()));
}

void SetPage::savePdf(bool withKey) {
  const QString file =
      questions_.file(window(), {FileQuestion::save, tr("Save as PDF"), tr("PDF (*.pdf)"),
                                 withKey ? tr("practice-key.pdf") : tr("practice-questions.pdf")});
  if (file.isEmpty()) return;
  const auto paper = static_cast<PaperSize>(paper_->currentIndex());
  const auto kind = withKey ? PracticeSheetKind::key : PracticeSheetKind::questions;
  if (const auto written = writePracticePdf(file, plan(), kind, paper); !written)
    questions_.tell(window(), tr("The sheet was not saved"), refusedFile(file, written.refusal()));
}

}  // namespace wardchalk::ui
