#include "ui/shell/rules_desk.h"

#include <QFileInfo>
#include <QVBoxLayout>

#include "core/record/rules_file.h"
#include "core/record/text_file.h"
#include "core/words/phrasebook.h"
#include "core/words/sentences.h"
#include "ui/record/rules_editor.h"
#include "ui/shell/case_document.h"
#include "ui/shell/dialogs.h"
#include "ui/shell/notice_bar.h"
#include "ui/shell/other_windows.h"
#include "ui/shell/settings.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

const QString exactName = QStringLiteral("exact");
const QString classroomName = QStringLiteral("classroom");

QString rulesFilter() { return RulesDesk::tr("House rules (*.json)"); }

}  // namespace

RulesDesk::RulesDesk(const WindowParts& parts, HouseRules& rules, Settings& settings)
    : QObject(parts.window),
      parts_(parts),
      rules_(rules),
      settings_(settings),
      notice_(new NoticeBar("rules-notice")) {
  parts_.notices->addWidget(notice_);
  if (kind() == RulesKind::own) own_ = rules_;
  notice_->offer("rules-notice-close", tr("Understood"), [this] { notice_->quiet(); });
}

void RulesDesk::start() {
  const QString chosen = settings_.rules();
  if (chosen.isEmpty()) return;
  if (chosen == exactName) return use(exactRules());
  if (chosen == classroomName) return use(classroomRules());
  const Result<HouseRules> read = readFile(chosen);
  if (read) return use(*read, chosen);
  settings_.setRules({});  // said once; the next start is clean
  use(exactRules());
  lost_ = fromCore(
      say(PhraseId::rules_unreadable, {{"file", chosen.toStdString()}, {"why", sentence(read.refusal())}}));
  notice_->say(lost_);
}

void RulesDesk::use(RulesKind kind) {
  switch (kind) {
    case RulesKind::exact:
      settings_.setRules(exactName);
      return use(exactRules());
    case RulesKind::classroom:
      settings_.setRules(classroomName);
      return use(classroomRules());
    case RulesKind::own:
      break;
  }
  if (!own_) return;
  if (!ownFile_.isEmpty()) settings_.setRules(ownFile_);
  use(HouseRules(*own_), QString(ownFile_));
}

RulesKind RulesDesk::kind() const {
  if (rules_ == exactRules()) return RulesKind::exact;
  return rules_ == classroomRules() ? RulesKind::classroom : RulesKind::own;
}

QString RulesDesk::trouble() const {
  if (!lost_.isEmpty() || kind() != RulesKind::own || ownFile_.isEmpty()) return lost_;
  const Result<HouseRules> read = readFile(ownFile_);
  if (read) return {};
  return tr("The file of these rules cannot be read any more, so they hold until the window is closed. %1")
      .arg(refusedFile(ownFile_, read.refusal()));
}

Result<HouseRules> RulesDesk::readFile(const QString& file) const {
  const Result<std::string> text = readTextFile(nativePath(file));
  if (!text) return text.refusal();
  return readRules(*text);
}

void RulesDesk::openFile(QWidget* above) {
  const QString file =
      parts_.dialogs.file(over(above), {FileQuestion::open, tr("Open house rules"), rulesFilter(), {}});
  if (file.isEmpty()) return;
  const Result<HouseRules> read = readFile(file);
  if (!read)
    return parts_.dialogs.tell(over(above), tr("The house rules were not changed"),
                               refusedFile(file, read.refusal()));
  const QString whole = QFileInfo(file).absoluteFilePath();
  settings_.setRules(whole);
  use(*read, whole);
}

void RulesDesk::use(const HouseRules& rules, const QString& file) {
  notice_->quiet();
  lost_.clear();
  rules_ = rules;
  if (kind() == RulesKind::own) {
    own_ = rules;
    ownFile_ = file;
  }
  Q_EMIT changed();
}

bool RulesDesk::save(const HouseRules& rules) {
  const QString file = parts_.dialogs.file(
      parts_.window, {FileQuestion::save, tr("Save the house rules"), rulesFilter(), tr("house-rules.json")});
  if (file.isEmpty()) return false;
  if (const auto written = writeTextFile(nativePath(file), writeRules(rules)); !written) {
    parts_.dialogs.tell(parts_.window, tr("The house rules were not saved"),
                        refusedFile(file, written.refusal()));
    return false;
  }
  const QString whole = QFileInfo(file).absoluteFilePath();
  settings_.setRules(whole);
  use(rules, whole);
  return true;
}

void RulesDesk::edit(QWidget* above) {
  auto* editor = new RulesEditor(rules_, over(above));
  connect(editor, &RulesEditor::saveWanted, this, [this, editor](const HouseRules& rules) {
    if (save(rules)) editor->close();
  });
  connect(editor, &RulesEditor::useWanted, this, [this, editor](const HouseRules& rules) {
    use(rules);
    editor->close();
  });
  keepWhenCovered(editor, NewChildThen::returns);
  editor->open();
}

}  // namespace wardchalk::ui
