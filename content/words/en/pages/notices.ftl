### Whose work is in the calculator beside our own.

notices-title = Licences of others
notices-description = The open-source code that the calculator is built with.
notices-lede = The calculator holds open-source code of others. We thank them.
notices-own = Slipbark's own code is under MIT or Apache-2.0, as you choose. [Sources](sources/) tells where its facts come from.
notices-words = The list is made from the build's own record. [All licences in full](notices.txt) stand in one file, with that of Rust's standard library named first.
notices-table = Table: code of others in the calculator
notices-crate = Package
notices-version = Version
notices-licence = Licence
