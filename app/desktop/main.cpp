#include "ui/shell/desktop_program.h"

int main(int argc, char** argv) { return wardchalk::ui::runDesktop(argc, argv); }
