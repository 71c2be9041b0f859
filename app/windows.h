#pragma once

#include "ui/files/settings_file.h"
#include "ui/language/language.h"

#include <QObject>

#include <string>
#include <vector>

namespace frontwright {

class MainWindow;

/// The program's windows, one for each case, and what they share. A window that is closed is gone.
class Windows : public QObject {
public:
    Windows();

    /// One window for each file, or one with the start page. Then tells what there is to tell:
    /// work that was not saved, a crash, settings that could not be read.
    void start(const std::vector<std::string>& files);

private:
    MainWindow* open(const QString& file);
    void tell(MainWindow& window, bool showsNoCase);

    OpenedSettings m_settings;
    SpokenLanguage m_language;
};

} // namespace frontwright
