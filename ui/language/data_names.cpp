#include "ui/language/data_names.h"

#include <QCoreApplication>

namespace frontwright {

QString toldName(const std::string& name) {
    return QCoreApplication::translate("frontwright", name.c_str());
}

} // namespace frontwright
