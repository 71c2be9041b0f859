#include "ui/language/told.h"

#include <QCoreApplication>

namespace frontwright {

QString toldName(const std::string& name) {
    return QCoreApplication::translate("frontwright", name.c_str());
}

} // namespace frontwright
